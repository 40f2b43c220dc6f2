/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.json;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AtomicFilesTest {

    private static final byte[] OLD = Samples.bytes("old");
    private static final byte[] NEW = Samples.bytes("new content");

    @TempDir
    private Path folder;

    private Path file;

    @BeforeEach
    void nameTheFile() {
        file = folder.resolve("a.devices.json");
    }

    @Test
    void createsAFile() throws IOException {
        AtomicFiles.write(file, NEW);
        assertOnly(NEW, file);
    }

    @Test
    void replacesAFile() throws IOException {
        Files.write(file, OLD);
        AtomicFiles.write(file, NEW);
        assertOnly(NEW, file);
    }

    @Test
    void keepsPermissions() throws IOException {
        assumeTrue(isPosix());
        Files.write(file, OLD);
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r----x"));
        AtomicFiles.write(file, NEW);
        assertEquals("rw-r----x", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
    }

    @Test
    void givesANewFileTheUsualPermissions() throws IOException {
        assumeTrue(isPosix());
        AtomicFiles.write(file, NEW);
        assertEquals(Files.getPosixFilePermissions(Files.createFile(folder.resolve("usual"))),
                Files.getPosixFilePermissions(file));
    }

    @Test
    void followsALinkAndKeepsIt() throws IOException {
        assumeTrue(isPosix());
        Path real = Files.createDirectory(folder.resolve("elsewhere")).resolve("real.json");
        Files.write(real, OLD);
        Files.createSymbolicLink(file, Path.of("elsewhere", "real.json"));
        AtomicFiles.write(file, NEW);
        assertTrue(Files.isSymbolicLink(file));
        assertArrayEquals(NEW, Files.readAllBytes(real));
    }

    @Test
    void createsTheFileThatALinkLeadsTo() throws IOException {
        assumeTrue(isPosix());
        Files.createSymbolicLink(file, Path.of("later.json"));
        AtomicFiles.write(file, NEW);
        assertTrue(Files.isSymbolicLink(file));
        assertArrayEquals(NEW, Files.readAllBytes(folder.resolve("later.json")));
    }

    @Test
    void givesUpOnLinksInACircle() throws IOException {
        assumeTrue(isPosix());
        Files.createSymbolicLink(file, file.getFileName());
        assertThrows(IOException.class, () -> AtomicFiles.write(file, NEW));
    }

    @Test
    void leavesEverythingAsItWasWhenItFails() throws IOException {
        Path taken = Files.createDirectory(file).resolve("inside");
        Files.write(taken, OLD);
        assertThrows(IOException.class, () -> AtomicFiles.write(file, NEW));
        assertArrayEquals(OLD, Files.readAllBytes(taken));
        assertEquals(List.of(file), list());
    }

    @Test
    void failsWithoutItsFolder() {
        assertThrows(IOException.class, () -> AtomicFiles.write(folder.resolve("none").resolve("a.json"), NEW));
    }

    @Test
    void refusesAReadOnlyFile() throws IOException {
        Files.write(file, OLD);
        assumeTrue(file.toFile().setReadOnly());
        assumeFalse(Files.isWritable(file), "this user may write everything");
        assertThrows(AccessDeniedException.class, () -> AtomicFiles.write(file, NEW));
        assertOnly(OLD, file);
    }

    private void assertOnly(byte[] content, Path only) throws IOException {
        assertArrayEquals(content, Files.readAllBytes(only));
        assertEquals(List.of(only), list());
    }

    private List<Path> list() throws IOException {
        try (Stream<Path> paths = Files.list(folder)) {
            return paths.toList();
        }
    }

    private boolean isPosix() {
        return folder.getFileSystem().supportedFileAttributeViews().contains("posix");
    }
}
