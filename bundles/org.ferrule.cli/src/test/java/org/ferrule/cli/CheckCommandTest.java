/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;

class CheckCommandTest {
    @TempDir
    private Path folder;

    @Test
    void findsNoProblemInTheRuleSetThatShips() {
        Run run = Run.of("check", Run.demo("house.rules.json"));
        assertEquals(0, run.exitCode(), run::out);
        assertTrue(run.out().contains("no problems"), run::out);
    }

    @Test
    void tellsThePlaceInsideABadDimension() throws IOException {
        Path library = edited("access-and-guides.devices.json", "\"0.071 in (1.78 mm)\"", "\"0,071 in\"");
        Run run = Run.of("check", library);
        assertEquals(1, run.exitCode());
        assertTrue(run.out().matches("(?s).*guides.devices.json:\\d+:\\d+: error: .*"), run::out);
    }

    @Test
    void goesOnAfterABrokenFile() throws IOException {
        Path broken = Files.writeString(folder.resolve("broken.rules.json"), "{ \"format\": ");
        Run run = Run.of("check", broken, Run.demo("house.rules.json"));
        assertEquals(1, run.exitCode());
        assertTrue(run.out().contains("broken.rules.json:1:"), run::out);
        assertTrue(run.out().contains("2 documents"), run::out);
    }

    @Test
    void tellsOfAChartWhoseLibraryIsMissing() throws IOException {
        Path chart = Files.copy(Run.demo("balloons-through-guides.chart.json"), folder.resolve("lost.chart.json"));
        Run run = Run.of("check", chart);
        assertEquals(1, run.exitCode());
        assertTrue(run.out().contains("there is no file"), run::out);
    }

    @Test
    void findsNoProblemInTheTechniquesThatShip() {
        Run run = Run.of("check", Run.demo("balloon-does-not-cross.techniques.json"),
                Run.demo("device-does-not-reach.techniques.json"));
        assertEquals(0, run.exitCode(), run::out);
    }

    @Test
    void findsNoProblemInACaseThatShips() {
        Run run = Run.of("check", Run.demo("case-with-a-log-6-fr.case.json"));
        assertEquals(0, run.exitCode(), run::out);
    }

    /** Some of what lies on the shelf that ships has expired on purpose, and nothing else is wrong with it. */
    @Test
    void tellsOnlyOfExpiredLotsInTheShelfThatShips() {
        Run run = Run.of("check", Run.demo("laboratory.shelf.json"));
        assertEquals(1, run.exitCode(), run::out);
        assertTrue(run.out().lines().filter(line -> line.contains("warning") || line.contains("error"))
                .allMatch(line -> line.contains("warning: expired on ")), run::out);
    }

    @Test
    void tellsWhereACaseNamesWhatNobodyDescribes() throws IOException {
        for (String name : Run.demo("house.rules.json").toFile().getParentFile().list()) {
            Files.copy(Run.demo(name), folder.resolve(name));
        }
        Path file = folder.resolve("case-with-a-log-6-fr.case.json");
        Files.writeString(file, Files.readString(file).replace("\"hes-workhorse-190\"", "\"hes-workhorse-191\""));
        Run run = Run.of("check", file);
        assertEquals(1, run.exitCode());
        assertTrue(run.out().contains("ferrule.case system mainWire: no device is called"), run::out);
    }

    @Test
    void writesProblemsAsJson() throws IOException {
        Path broken = Files.writeString(folder.resolve("broken.rules.json"), "{ \"format\": ");
        JsonNode problems = new ObjectMapper().readTree(Run.of("check", "--json", broken).out());
        assertEquals(1, problems.get(0).get("line").asInt());
        assertEquals("error", problems.get(0).get("severity").asText());
    }

    private Path edited(String name, String from, String to) throws IOException {
        String text = Files.readString(Run.demo(name));
        assertTrue(text.contains(from));
        return Files.writeString(folder.resolve(name), text.replace(from, to));
    }
}
