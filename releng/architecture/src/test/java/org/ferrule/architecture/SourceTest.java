/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What every folder of sources holds. */
class SourceTest {

    static List<Path> sourceFolders() throws IOException {
        return Bundles.sourceFolders();
    }

    @ParameterizedTest
    @MethodSource("sourceFolders")
    void everyPackageIsDescribed(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            List<Path> bare = files.filter(file -> file.toString().endsWith(".java")).map(Path::getParent).distinct()
                    .filter(parent -> !Files.exists(parent.resolve("package-info.java"))).toList();
            assertEquals(List.of(), bare);
        }
    }
}
