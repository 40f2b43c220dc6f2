/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;

class ChartCommandTest {
    private static final Path CHART = Run.demo("balloons-through-guides.chart.json");

    @TempDir
    private Path folder;

    @Test
    void writesEveryFormatThatFileNamesAskFor() throws IOException {
        Run run = Run.of("chart", CHART, "--out", folder.resolve("c.pdf"), "--out", folder.resolve("c.csv"));
        assertEquals(1, run.exitCode(), run::err);
        assertEquals("%PDF", new String(Files.readAllBytes(folder.resolve("c.pdf")), 0, 4,
                java.nio.charset.StandardCharsets.US_ASCII));
        assertTrue(Files.size(folder.resolve("c.csv")) > 0);
    }

    @Test
    void laysCommaSeparatedValuesOutAsAsked() throws IOException {
        Path pairs = folder.resolve("pairs.csv");
        Path matrix = folder.resolve("matrix.csv");
        Run.of("chart", CHART, "--out", pairs);
        Run.of("chart", CHART, "--out", matrix, "--csv-layout", "matrix");
        assertTrue(Files.readAllLines(pairs).get(0).startsWith("outer,outer name,lumen,inner,"));
        assertTrue(Files.readAllLines(matrix).get(0).startsWith("outer,outer name,size,lumen,figure,"));
        assertEquals(2, Run.of("chart", CHART, "--out", matrix, "--csv-layout", "rows").exitCode());
    }

    @Test
    void namesTheFormatsItKnowsForAnUnknownOne() {
        Run run = Run.of("chart", CHART, "--out", folder.resolve("c.doc"));
        assertEquals(2, run.exitCode());
        assertTrue(run.err().contains(".pdf"), run::err);
        assertFalse(Files.exists(folder.resolve("c.doc")));
    }

    @Test
    void asksWhereToWrite() {
        assertEquals(2, Run.of("chart", CHART).exitCode());
    }

    @Test
    void answersEveryPairAsASingleQuestionDoes() throws IOException {
        JsonNode cells = new ObjectMapper().readTree(Run.of("chart", CHART, "--json").out());
        JsonNode cell = cells.get(cells.size() / 2);
        Object[] words = Stream.concat(Stream.of("fit", "--json", "--outer",
                cell.get("outer").asText() + "#" + cell.get("lumen").asText(), "--inner", cell.get("inner").asText()),
                libraries().stream().flatMap(f -> Stream.of("--library", f))).toArray();
        JsonNode single = new ObjectMapper().readTree(Run.of(words).out());
        assertEquals(single, cell);
    }

    @Test
    void demoWritesAllChartsAndTellsHowManyVerdictsOfEachKind() throws IOException {
        Path seeds = Files.createDirectory(folder.resolve("seeds"));
        try (Stream<Path> files = Files.list(Run.demo())) {
            for (Path file : files.filter(f -> !f.toString().endsWith(".case.json") || isShort(f)).toList()) {
                Files.copy(file, seeds.resolve(file.getFileName()));
            }
        }
        Path output = folder.resolve("output");
        Run run = Run.of("demo", seeds, output);
        assertEquals(0, run.exitCode(), run::err);
        assertEquals(1, run.out().lines().filter(l -> l.contains("steps: ")).count(), run::out);
        assertTrue(Files.size(output.resolve("case-out-of-reach-6-fr.pdf")) > 0);
        assertTrue(Files.size(output.resolve("case-out-of-reach-6-fr.svg")) > 0);
        long charts;
        try (Stream<Path> files = Files.list(Run.demo())) {
            charts = files.filter(f -> f.toString().endsWith(".chart.json")).count();
        }
        assertEquals(charts, run.out().lines().filter(l -> l.contains("verdicts:")).count());
        try (Stream<Path> files = Files.list(output)) {
            assertEquals(charts + 1, files.filter(f -> f.toString().endsWith(".pdf")).count());
        }
    }

    /** A case that is planned at once; the others take as long as their ladders are. */
    private static boolean isShort(Path file) {
        return file.getFileName().toString().equals("case-out-of-reach-6-fr.case.json");
    }

    private static List<Path> libraries() throws IOException {
        try (Stream<Path> files = Files.list(Run.demo())) {
            return files.filter(f -> f.toString().endsWith(".devices.json")).toList();
        }
    }
}
