/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.robot;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/** A workbench in a process of its own, with the bundles of this one; killed when it is closed. */
public final class SecondWorkbench implements AutoCloseable {
    private static final String CONFIGURATION = "osgi.configuration.area";
    private static final long PATIENCE_S = 60;

    private final Process process;
    private final Path output;

    private SecondWorkbench(Process process, Path output) {
        this.process = process;
        this.output = output;
    }

    /**
     * Starts a workbench. The first start with a folder finds out which bundles fit together; later ones know.
     *
     * @param folder where its configuration and its output go
     * @param workspace its workspace
     * @param properties system properties that it is given
     */
    public static SecondWorkbench start(Path folder, Path workspace, Map<String, String> properties)
            throws IOException {
        Path configuration = Files.createDirectories(folder.resolve("configuration"));
        Files.copy(path(System.getProperty(CONFIGURATION)).resolve("config.ini"), configuration.resolve("config.ini"),
                StandardCopyOption.REPLACE_EXISTING);
        Path output = Files.createTempFile(folder, "output", ".txt");
        List<String> command = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx512m", "-Duser.language=en", "-Duser.country=US"));
        ManagementFactory.getRuntimeMXBean().getInputArguments().stream().filter(option -> option.startsWith("-XX:"))
                .forEach(command::add);
        properties.forEach((name, value) -> command.add("-D" + name + "=" + value));
        command.addAll(
                List.of("-cp", System.getProperty("java.class.path"), "org.eclipse.equinox.launcher.Main", "-data",
                        workspace.toString(), "-configuration", configuration.toString(), "-nosplash", "-consoleLog",
                        "-product",
                        "org.ferrule.product.workbench", "-application", "org.ferrule.ui.application"));
        Process process = new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(output.toFile()).start();
        return new SecondWorkbench(process, output);
    }

    private static Path path(String url) {
        return url.startsWith("file:") ? Path.of(URI.create(url.replace(" ", "%20"))) : Path.of(url);
    }

    /** Tells whether it is still running. */
    public boolean running() {
        return process.isAlive();
    }

    /** Returns what it has printed and logged so far. */
    public String output() {
        try {
            return Files.readString(output);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Ends it at once, so that it can do nothing about it (SIGKILL), and waits until it is gone. */
    @Override
    public void close() {
        process.destroyForcibly().onExit().orTimeout(PATIENCE_S, TimeUnit.SECONDS).join();
    }
}
