/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.consumer;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Runs the program in a virtual machine of its own, with the kernel's jars and nothing else. */
class ConsumerTest {

    private static final Path INSTALLED = Path.of("/usr/lib/jvm");

    /** The Java that builds, and Java 25 where it is installed in the usual place. */
    static Stream<Path> javas() throws IOException {
        Stream<Path> own = Stream.of(Path.of(System.getProperty("java.home")));
        if (!Files.isDirectory(INSTALLED)) {
            return own;
        }
        try (Stream<Path> homes = Files.list(INSTALLED)) {
            return Stream.concat(own, homes.filter(ConsumerTest::isJava25).toList().stream());
        }
    }

    /** 0.070 in is 1.778 mm; a hundredth of a millimetre off either part leaves 0.058, 0.008 and no room. */
    @ParameterizedTest
    @MethodSource("javas")
    void answersOnTheKernelAlone(Path java) throws IOException, InterruptedException {
        assertEquals("Fits by geometry: clearance 0.05 mm", beginning(run(java, "0.070 in", "1.70 mm")));
        assertEquals("Tight by geometry: clearance <0.01 mm", beginning(run(java, "0.070 in", "1.75 mm")));
        assertEquals("Blocked by geometry: clearance -0.15 mm", beginning(run(java, "0.070 in", "1.90 mm")));
    }

    private static String beginning(String answer) {
        return answer.substring(0, answer.indexOf(" /"));
    }

    private static boolean isJava25(Path home) {
        Path release = home.resolve("release");
        try {
            return Files.exists(release) && Files.readString(release).contains("JAVA_VERSION=\"25");
        } catch (IOException e) {
            return false;
        }
    }

    private static String run(Path java, String... words) throws IOException, InterruptedException {
        String classPath = Stream.concat(Stream.of(Path.of("target/classes")), Kernel.jars().stream())
                .map(Path::toString).collect(Collectors.joining(File.pathSeparator));
        ProcessBuilder command = new ProcessBuilder(java.resolve("bin/java").toString(), "-cp", classPath,
                Consumer.class.getName());
        command.command().addAll(List.of(words));
        Process process = command.redirectErrorStream(true).start();
        String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
        assertEquals(0, process.waitFor(), output);
        return output;
    }
}
