/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;

class CompareCommandTest {
    @TempDir
    private Path folder;

    private static Run compare(Object... more) {
        List<Object> words = new ArrayList<>(List.of("compare", "--library", Run.demo("balloons.devices.json"),
                "--library", Run.demo("access-and-guides.devices.json")));
        words.addAll(Arrays.asList(more));
        return Run.of(words.toArray());
    }

    @Test
    void writesATableOfDifferences() {
        Run run = compare("dun-sc-200-15", "dun-sc-300-15", "--wire", "0.014 in");
        assertEquals(0, run.exitCode(), run::err);
        assertTrue(run.out().contains("(dun-sc-200-15)"), run::out);
        for (String row : List.of("Crossing profile", "Effective length", "Tip to exit port", "Lumen less wire")) {
            assertTrue(run.out().contains(row), run::out);
        }
        assertTrue(run.out().contains("assumed"), run::out);
        assertTrue(run.out().contains("Rule set: "), run::out);
    }

    /** The verdict of the fit command and the first contact of the same pair. */
    @Test
    void firstContactIsWhereFitStops() throws IOException {
        JsonNode contact = json(compare("dun-sc-200-15", "dun-sc-300-15", "--lumen", "dun-sc-200-15#wire", "--json"))
                .get("firstContacts").get(1);
        Run fit = Run.of("fit", "--library", Run.demo("balloons.devices.json"), "--outer", "dun-sc-200-15#wire",
                "--inner", "dun-sc-300-15", "--json");
        JsonNode answer = json(fit);
        assertEquals("blocked", answer.get("geometry").asText());
        assertEquals(answer.get("limiting").get("deviceStationMm").decimalValue(),
                contact.get("stop").get("deviceStationMm").decimalValue());
    }

    @Test
    void stationsCountFromTheLandmark() throws IOException {
        JsonNode device = json(compare("dun-sc-200-15", "dun-sc-300-15", "--from", "exit port", "--json"))
                .get("devices").get(0);
        assertEquals(260, device.get("landmarkMm").asInt());
        assertEquals(-260, device.get("curves").get(0).get("sections").get(0).get("fromMm").asInt());
    }

    @Test
    void writesPagesInEveryFormat() throws IOException {
        Path pdf = folder.resolve("compared.pdf");
        Path svg = folder.resolve("compared.svg");
        Path png = folder.resolve("compared.png");
        Run run = compare("dun-sc-200-15", "dun-sc-300-15", "--lumen", "kes-guide-6fr-right-100", "--out", pdf, "--out",
                svg, "--out", png);
        assertEquals(0, run.exitCode(), run::err);
        assertTrue(Files.readString(pdf, StandardCharsets.ISO_8859_1).startsWith("%PDF-"));
        assertTrue(Files.readString(svg).contains("curve:dun-sc-200-15:outer"));
        assertTrue(Files.readString(folder.resolve("compared-2.svg")).contains("Sources"));
        assertArrayEquals(new byte[] { (byte) 0x89, 'P', 'N', 'G' }, Arrays.copyOf(Files.readAllBytes(png), 4));
        assertTrue(run.err().contains("wrote " + folder.resolve("compared-2.png")), run::err);
    }

    @Test
    void refusesWhatCannotBeCompared() {
        assertRefused("2 to 8 devices can be compared, not 1", "dun-sc-200-15");
        assertRefused("is no landmark", "dun-sc-200-15", "dun-sc-300-15", "--from", "hub");
        assertRefused("--wire \"14\"", "dun-sc-200-15", "dun-sc-300-15", "--wire", "14");
        assertRefused("--unit must be mm, in or Fr", "dun-sc-200-15", "dun-sc-300-15", "--unit", "cm");
        assertRefused("no-such", "dun-sc-200-15", "no-such");
        assertRefused("known are .pdf, .svg, .png", "dun-sc-200-15", "dun-sc-300-15", "--out",
                folder.resolve("compared.doc"));
    }

    private static void assertRefused(String because, Object... more) {
        Run run = compare(more);
        assertEquals(2, run.exitCode(), run::out);
        assertTrue(run.err().contains(because), run::err);
    }

    private static JsonNode json(Run run) throws IOException {
        return new ObjectMapper().readTree(run.out());
    }
}
