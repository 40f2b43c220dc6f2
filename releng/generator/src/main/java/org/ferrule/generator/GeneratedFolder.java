/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.generator;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * A folder whose whole content is generated.
 *
 * @param fresh where it was generated just now
 * @param committed where it stands in the repository
 */
public record GeneratedFolder(Path fresh, Path committed) {

    /**
     * Tells what is not current.
     *
     * @return the paths, relative to the folder, of the files that are missing, left over or different
     * @throws IOException if a file cannot be read
     */
    public List<Path> differences() throws IOException {
        TreeSet<Path> all = new TreeSet<>(files(fresh));
        all.addAll(files(committed));
        List<Path> result = new ArrayList<>();
        for (Path file : all) {
            if (!same(fresh.resolve(file), committed.resolve(file))) {
                result.add(file);
            }
        }
        return result;
    }

    /**
     * Makes the committed folder equal to the fresh one; files that are current already are left alone.
     *
     * @throws IOException if a file cannot be read or written
     */
    public void install() throws IOException {
        for (Path file : differences()) {
            Path target = committed.resolve(file);
            if (Files.exists(fresh.resolve(file))) {
                Files.createDirectories(target.getParent());
                Files.write(target, Files.readAllBytes(fresh.resolve(file)));
            } else {
                Files.delete(target);
            }
        }
    }

    private static boolean same(Path a, Path b) throws IOException {
        return Files.exists(a) && Files.exists(b) && Arrays.equals(Files.readAllBytes(a), Files.readAllBytes(b));
    }

    private static List<Path> files(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> paths = Files.walk(folder)) {
            return paths.filter(Files::isRegularFile).map(folder::relativize).toList();
        }
    }
}
