/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.shipping;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.jar.Attributes;
import java.util.jar.Manifest;
import java.util.stream.Stream;

/**
 * A shipped bundle, read from its jar or folder.
 *
 * @param file where it lies
 * @param name its symbolic name
 * @param version its version with the qualifier
 * @param licenceHeader the licence that its manifest names
 * @param about the text of its about.html, where the platform's bundles name their licence
 */
record Bundle(Path file, String name, String version, Optional<String> licenceHeader, Optional<String> about) {

    /**
     * Reads every bundle in a plugins folder, in the order of their file names.
     *
     * @param plugins the folder
     * @return its bundles
     */
    static List<Bundle> in(Path plugins) {
        try (Stream<Path> files = Files.list(plugins)) {
            return files.sorted().map(Bundle::read).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Reads one bundle.
     *
     * @param file a jar or an unpacked folder
     * @return the bundle
     * @throws ShippingException if it is no bundle
     */
    static Bundle read(Path file) {
        try {
            return Files.isDirectory(file) ? fromFolder(file, file) : fromJar(file);
        } catch (IOException e) {
            throw new UncheckedIOException(file.toString(), e);
        }
    }

    private static Bundle fromJar(Path file) throws IOException {
        try (FileSystem jar = FileSystems.newFileSystem(file)) {
            return fromFolder(file, jar.getPath("/"));
        }
    }

    private static Bundle fromFolder(Path file, Path root) throws IOException {
        Attributes manifest = manifest(file, root.resolve("META-INF/MANIFEST.MF"));
        Optional<Properties> maven = manifest.getValue("Bundle-SymbolicName") == null ? coordinates(root)
                : Optional.empty();
        if (maven.isPresent()) {
            return new Bundle(file, wrappedName(maven.get()), maven.get().getProperty("version"), Optional.empty(),
                    Optional.empty());
        }
        String name = required(file, manifest, "Bundle-SymbolicName").split(";")[0].strip();
        String version = required(file, manifest, "Bundle-Version").strip();
        return new Bundle(file, name, version, Optional.ofNullable(manifest.getValue("Bundle-License")),
                text(root.resolve("about.html")));
    }

    /** The Maven coordinates that a plain jar carries; the product ships it wrapped as a bundle. */
    private static Optional<Properties> coordinates(Path root) throws IOException {
        Path maven = root.resolve("META-INF/maven");
        if (!Files.exists(maven)) {
            return Optional.empty();
        }
        try (Stream<Path> files = Files.walk(maven)) {
            Optional<Path> found = files.filter(path -> path.endsWith("pom.properties")).findFirst();
            if (found.isEmpty()) {
                return Optional.empty();
            }
            Properties properties = new Properties();
            try (InputStream in = Files.newInputStream(found.get())) {
                properties.load(in);
            }
            return Optional.of(properties);
        }
    }

    /** The name of the bundle that it is wrapped as: the group, and the artifact where the group does not end with it. */
    private static String wrappedName(Properties maven) {
        String group = maven.getProperty("groupId");
        String artifact = maven.getProperty("artifactId");
        return group.endsWith("." + artifact) ? group : group + "." + artifact;
    }

    private static Attributes manifest(Path file, Path manifest) throws IOException {
        if (!Files.exists(manifest)) {
            throw new ShippingException(file + " has no manifest");
        }
        try (InputStream in = Files.newInputStream(manifest)) {
            return new Manifest(in).getMainAttributes();
        }
    }

    private static String required(Path file, Attributes manifest, String header) {
        String value = manifest.getValue(header);
        if (value == null) {
            throw new ShippingException(file + " has no " + header);
        }
        return value;
    }

    private static Optional<String> text(Path file) throws IOException {
        if (!Files.exists(file)) {
            return Optional.empty();
        }
        // about.html files come in more than one encoding; the licence's name is plain ASCII in all of them
        return Optional.of(new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
    }

    boolean isOwn() {
        return name.startsWith("org.ferrule.");
    }

    /** The version without a build's qualifier, which would change the notice for no reason. */
    String release() {
        String[] parts = version.split("\\.");
        return String.join(".", List.of(parts).subList(0, Math.min(3, parts.length)));
    }
}
