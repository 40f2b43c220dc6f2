/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Random;
import java.util.concurrent.TimeUnit;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Kills a second Java machine in the middle of writing: the file is always one whole version. */
class KilledWriterTest {

    private static final int SIZE = 4_000_000;
    private static final int KILLS = 6;
    private static final long PATIENCE_MS = 60_000;

    @Test
    void leavesAWholeVersion(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("a.devices.json");
        Random random = new Random(7);
        for (int i = 0; i < KILLS; i++) {
            killWhileWriting(file, random.nextInt(60));
            assertWhole(file);
        }
    }

    private static void killWhileWriting(Path file, int delayMs) throws IOException, InterruptedException {
        Files.deleteIfExists(file);
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        Process writer = new ProcessBuilder(java, "-cp", System.getProperty("java.class.path"), Writer.class.getName(),
                file.toString()).redirectErrorStream(true).start();
        long deadline = System.currentTimeMillis() + PATIENCE_MS;
        while (!Files.exists(file) && writer.isAlive() && System.currentTimeMillis() < deadline) {
            Thread.sleep(1);
        }
        Thread.sleep(delayMs);
        assertTrue(writer.isAlive(), () -> "the writer ended by itself: " + output(writer));
        assertTrue(writer.destroyForcibly().waitFor(PATIENCE_MS, TimeUnit.MILLISECONDS));
    }

    private static String output(Process process) {
        try {
            return new String(process.getInputStream().readAllBytes());
        } catch (IOException e) {
            return e.toString();
        }
    }

    private static void assertWhole(Path file) throws IOException {
        byte[] content = Files.readAllBytes(file);
        assertEquals(SIZE, content.length);
        for (byte b : content) {
            assertEquals(content[0], b);
        }
    }

    /** Writes one version after the other, each all of one letter, until it is killed. */
    static final class Writer {

        private Writer() {
        }

        public static void main(String[] args) throws IOException {
            byte[] content = new byte[SIZE];
            for (int version = 0;; version++) {
                Arrays.fill(content, (byte) ('a' + version % 26));
                AtomicFiles.write(Path.of(args[0]), content);
            }
        }
    }
}
