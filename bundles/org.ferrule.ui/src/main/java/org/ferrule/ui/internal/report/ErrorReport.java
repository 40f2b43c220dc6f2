/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.report;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.Platform;
import org.eclipse.core.runtime.SubMonitor;
import org.osgi.framework.Bundle;

/**
 * Writes a report as a ZIP file: the program's log with those that it has put aside, the versions of everything, and the
 * documents that the user has chosen. Nothing else of the workspace; the log may name files and folders.
 */
final class ErrorReport {

    private static final List<String> PROPERTIES = List.of("os.name", "os.version", "os.arch", "java.vendor",
            "java.version", "java.vm.name", "user.language", "user.country", "osgi.ws");
    private static final double MEGABYTE = 1024.0 * 1024;

    private final List<IFile> documents;

    ErrorReport(List<IFile> documents) {
        this.documents = List.copyOf(documents);
    }

    /** Writes the report; what is there already is replaced. */
    void write(Path target, IProgressMonitor monitor) throws IOException {
        SubMonitor progress = SubMonitor.convert(monitor, "Writing " + target.getFileName(), documents.size() + 2);
        try (OutputStream file = Files.newOutputStream(target); ZipOutputStream zip = new ZipOutputStream(file)) {
            entry(zip, "versions.txt", versions().getBytes(StandardCharsets.UTF_8));
            progress.split(1);
            for (Path log : logs()) {
                entry(zip, "log/" + log.getFileName().toString().replaceFirst("^\\.", ""), Files.readAllBytes(log));
            }
            progress.split(1);
            for (IFile document : documents) {
                entry(zip, "documents" + document.getFullPath(), Files.readAllBytes(document.getLocation().toPath()));
                progress.split(1);
            }
        }
    }

    private static void entry(ZipOutputStream zip, String name, byte[] content) throws IOException {
        zip.putNextEntry(new ZipEntry(name));
        zip.write(content);
        zip.closeEntry();
    }

    /** The log and what it was before it grew too long: {@code .log} and {@code .bak_0.log}. */
    private static List<Path> logs() throws IOException {
        Path log = Platform.getLogFileLocation().toPath();
        if (!Files.isDirectory(log.getParent())) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(log.getParent())) {
            return files.filter(file -> file.getFileName().toString().endsWith(".log")).filter(Files::isRegularFile)
                    .sorted().toList();
        }
    }

    private static String versions() {
        StringBuilder text = new StringBuilder("Ferrule\n\n");
        PROPERTIES.forEach(name -> text.append(name).append(": ").append(System.getProperty(name, "")).append('\n'));
        text.append(String.format("heap: %.0f of %.0f MB%n%n", Runtime.getRuntime().totalMemory() / MEGABYTE,
                Runtime.getRuntime().maxMemory() / MEGABYTE));
        Map<String, String> bundles = new TreeMap<>();
        for (Bundle bundle : Platform.getBundle("org.ferrule.ui").getBundleContext().getBundles()) {
            bundles.put(bundle.getSymbolicName(), bundle.getVersion() + state(bundle));
        }
        bundles.forEach((name, version) -> text.append(name).append(' ').append(version).append('\n'));
        return text.toString();
    }

    private static String state(Bundle bundle) {
        return bundle.getState() == Bundle.INSTALLED ? " (not resolved)" : "";
    }
}
