/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.shipping;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/** The build steps, as the build calls them: a word and its arguments. */
public final class Shipping {

    private static final String USAGE = """
            notice check|write NOTICE LICENCES PRODUCTS   compare or write the notice for all products below a folder
            start-jar MAIN CLASS_PATH_FILE PRODUCT JAR    write the start jar of a product, named relative to it""";

    private Shipping() {
    }

    /**
     * Runs one step.
     *
     * @param arguments the word and its arguments
     * @throws IOException if a file cannot be read or written
     */
    public static void main(String... arguments) throws IOException {
        if (arguments.length == 5 && arguments[0].equals("notice")) {
            notice(arguments[1], Path.of(arguments[2]), Path.of(arguments[3]), Path.of(arguments[4]));
        } else if (arguments.length == 5 && arguments[0].equals("start-jar")) {
            startJar(arguments[1], Path.of(arguments[2]), Path.of(arguments[3]), arguments[4]);
        } else {
            throw new ShippingException("expected one of\n" + USAGE + "\nnot " + String.join(" ", arguments));
        }
    }

    private static void notice(String mode, Path file, Path licences, Path products) throws IOException {
        List<Bundle> bundles = new ArrayList<>();
        for (Path plugins : pluginFolders(products)) {
            bundles.addAll(Bundle.in(plugins));
        }
        String text = new Notice(Licences.fromTable(licences)).of(bundles);
        if (mode.equals("write")) {
            Files.writeString(file, text);
        } else if (!Files.exists(file) || !Files.readString(file).equals(text)) {
            throw new ShippingException(file + " is not what the product ships: run releng/notice");
        }
    }

    private static List<Path> pluginFolders(Path products) throws IOException {
        try (Stream<Path> folders = Files.find(products, 8, (path, attributes) -> attributes.isDirectory()
                && path.endsWith("plugins"))) {
            List<Path> found = folders.toList();
            if (found.isEmpty()) {
                throw new ShippingException("no product below " + products);
            }
            return found;
        }
    }

    private static void startJar(String mainClass, Path classPath, Path product, String jar) throws IOException {
        List<Bundle> needed = Arrays.stream(Files.readString(classPath, StandardCharsets.UTF_8).strip()
                .split(File.pathSeparator)).map(Path::of).map(Bundle::read).toList();
        new StartJar(mainClass).write(product.resolve(jar), needed, Bundle.in(product.resolve("plugins")));
    }
}
