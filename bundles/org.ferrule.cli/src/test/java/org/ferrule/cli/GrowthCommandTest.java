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

class GrowthCommandTest {
    private static final Path BALLOONS = Run.demo("balloons.devices.json");

    @TempDir
    private Path folder;

    @Test
    void writesARowForEveryPrintedPressure() {
        Run run = Run.of("growth", "--library", BALLOONS, "dun-sc-300-15", "dun-nc-300-15");
        assertEquals(0, run.exitCode(), run::err);
        assertTrue(run.out().contains("A Semi-compliant balloon 3.00 x 15 mm: nominal "), run::out);
        assertTrue(run.out().lines().anyMatch(line -> line.matches("\\d+ atm +[0-9.]+ mm~? .*")), run::out);
        assertTrue(run.out().contains("beyond the rated burst pressure"), run::out);
    }

    @Test
    void printedRowsStandInTheJsonAsTheyAreInTheLibrary() throws IOException {
        Run run = Run.of("growth", "--library", BALLOONS, "dun-sc-300-15", "--json");
        JsonNode balloon = new ObjectMapper().readTree(run.out()).get("balloons").get(0);
        JsonNode library = new ObjectMapper().readTree(Files.readString(BALLOONS)).get("devices");
        JsonNode rows = null;
        for (JsonNode device : library) {
            rows = device.get("id").asText().equals("dun-sc-300-15") ? device.get("balloon").get("compliance") : rows;
        }
        assertEquals(rows.get(0).get("diameter").asText(), balloon.get("printed").get(0).get("diameterMm")
                .decimalValue().setScale(2).toPlainString() + " mm");
        assertTrue(balloon.get("printed").size() <= rows.size());
    }

    @Test
    void aDeviceWithoutABalloonHasNoCurve() {
        Run run = Run.of("growth", "--library", BALLOONS, "--library", Run.demo("wires.devices.json"), "dun-sc-300-15",
                firstWire());
        assertEquals(1, run.exitCode(), run::err);
        assertTrue(run.out().contains("no curve, it has no balloon"), run::out);
    }

    private static String firstWire() {
        try {
            return new ObjectMapper().readTree(Files.readString(Run.demo("wires.devices.json"))).get("devices").get(0)
                    .get("id").asText();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void writesThePlot() throws IOException {
        Path svg = folder.resolve("growth.svg");
        Run run = Run.of("growth", "--library", BALLOONS, "dun-sc-300-15", "dun-nc-300-15", "--out", svg, "--out",
                folder.resolve("growth.png"), "--out", folder.resolve("growth.pdf"));
        assertEquals(0, run.exitCode(), run::err);
        String text = Files.readString(svg);
        assertTrue(text.contains("growth:dun-nc-300-15") && text.contains("Balloon catheters, rev. 3"), text);
        assertTrue(Files.size(folder.resolve("growth.png")) > 1000);
        assertTrue(Files.size(folder.resolve("growth.pdf")) > 1000);
    }
}
