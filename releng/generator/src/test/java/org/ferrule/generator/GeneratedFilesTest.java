/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.generator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class GeneratedFilesTest {

    private static final Path ROOT = Path.of("../..").toAbsolutePath().normalize();

    @TempDir
    private static Path scratch;

    private static List<GeneratedFolder> folders;

    @BeforeAll
    static void generate() throws IOException {
        folders = new Generation(ROOT, scratch).run();
    }

    @Test
    void committedFilesAreCurrent() throws IOException {
        List<Path> stale = new ArrayList<>();
        for (GeneratedFolder folder : folders) {
            folder.differences().forEach(file -> stale.add(ROOT.relativize(folder.committed().resolve(file))));
        }
        assertEquals(List.of(), stale, "not current: run releng/regenerate and commit the result");
    }

    @Test
    void everyFolderHasFiles() throws IOException {
        for (GeneratedFolder folder : folders) {
            assertFalse(new GeneratedFolder(folder.fresh(), scratch.resolve("nowhere")).differences().isEmpty());
        }
    }

    @Test
    void findsMissingLeftOverAndChangedFiles(@TempDir Path folder) throws IOException {
        Path fresh = Files.createDirectories(folder.resolve("fresh"));
        Path committed = Files.createDirectories(folder.resolve("committed"));
        Files.writeString(fresh.resolve("missing"), "");
        Files.writeString(committed.resolve("left-over"), "");
        Files.writeString(fresh.resolve("changed"), "new");
        Files.writeString(committed.resolve("changed"), "old");
        GeneratedFolder pair = new GeneratedFolder(fresh, committed);
        assertEquals(List.of(Path.of("changed"), Path.of("left-over"), Path.of("missing")), pair.differences());
        pair.install();
        assertEquals(List.of(), pair.differences());
    }
}
