/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.architecture;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;

/** The bundles of this project and their compiled classes. */
final class Bundles {

    private static final Path FOLDER = Path.of("../../bundles");
    private static final String TESTS = ".tests";

    private Bundles() {
    }

    /** Names of all bundles but those with tests. */
    static List<String> names() throws IOException {
        return folders().map(folder -> folder.getFileName().toString()).toList();
    }

    static JavaClasses classes() throws IOException {
        return new ClassFileImporter().importPaths(folders().map(folder -> folder.resolve("target/classes"))
                .filter(Files::isDirectory).toList());
    }

    /** Whether a class was read from the folder of a bundle. */
    static boolean isFrom(JavaClass type, String bundle) {
        return type.getSource().orElseThrow().getUri().getPath().contains("/" + bundle + "/target/classes/");
    }

    /** Folders of sources that were written by hand. */
    static List<Path> sourceFolders() throws IOException {
        return folders().map(folder -> folder.resolve("src/main/java")).filter(Files::isDirectory).toList();
    }

    private static Stream<Path> folders() throws IOException {
        try (Stream<Path> found = Files.list(FOLDER)) {
            return found.filter(folder -> Files.exists(folder.resolve("pom.xml")))
                    .filter(folder -> !folder.toString().endsWith(TESTS)).sorted().toList().stream();
        }
    }
}
