/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;

class FitCommandTest {
    private static final Path GUIDES = Run.demo("access-and-guides.devices.json");
    private static final Path BALLOONS = Run.demo("balloons.devices.json");
    private static final Path BURRS = Run.demo("stents-and-atherectomy.devices.json");

    @TempDir
    private Path folder;

    @Test
    void saysThatABalloonFitsAndEndsWithZero() {
        Run run = fit("kes-guide-6fr-right-100", "san-rx-tight-150-12");
        assertEquals(0, run.exitCode(), run::err);
        assertTrue(run.out().startsWith("in:  Fits"), run::out);
        assertTrue(run.out().contains("The instructions for use decide."), run::out);
    }

    @Test
    void endsWithOneForAnyOtherVerdict() {
        Run run = Run.of("fit", "--library", GUIDES, "--library", BURRS, "--outer", "kes-guide-6fr-right-100",
                "--inner",
                "quo-burr-250");
        assertEquals(1, run.exitCode(), run::err);
        assertTrue(run.out().startsWith("in:  Blocked"), run::out);
    }

    @Test
    void writesTheKeysThatScriptsRelyOn() throws IOException {
        JsonNode answer = json("kes-guide-6fr-right-100", "san-rx-tight-150-12");
        assertEquals("fits", answer.get("verdict").asText());
        JsonNode clearance = answer.get("clearanceMm");
        assertTrue(decimal(clearance, "worst").compareTo(decimal(clearance, "nominal")) <= 0);
        assertTrue(decimal(clearance, "nominal").compareTo(decimal(clearance, "best")) <= 0);
        assertEquals("hypotube", answer.get("limiting").get("deviceSection").asText());
        assertTrue(answer.get("out").get("verdict").isTextual());
        assertEquals(0, decimal(answer, "reachMm").compareTo(new BigDecimal(450)));
        assertTrue(answer.get("reasons").size() > 0);
        assertTrue(answer.get("sources").size() > 0);
    }

    @Test
    void namesTheNearestDevicesForAnUnknownOne() {
        Run run = fit("kes-guide-6fr-right-10", "san-rx-tight-150-12");
        assertEquals(2, run.exitCode());
        assertTrue(run.err().contains("kes-guide-6fr-right-100"), run::err);
        assertEquals("", run.out());
    }

    @Test
    void refusesALumenThatIsNotThere() {
        Run run = fit("kes-guide-6fr-right-100#second", "san-rx-tight-150-12");
        assertEquals(2, run.exitCode());
        assertTrue(run.err().contains("\"second\""), run::err);
    }

    @Test
    void refusesAReachWithoutUnit() {
        Run run = Run.of("fit", "--library", GUIDES, "--library", BALLOONS, "--outer", "kes-guide-6fr-right-100",
                "--inner", "san-rx-tight-150-12", "--reach", "12");
        assertEquals(2, run.exitCode());
        assertTrue(run.err().contains("--reach \"12\""), run::err);
    }

    @Test
    void tellsThatADeviceIsTooShort() {
        Run run = Run.of("fit", "--library", GUIDES, "--library", BALLOONS, "--outer", "kes-guide-6fr-right-100",
                "--inner", "san-rx-tight-150-12", "--reach", "60 cm");
        assertEquals(1, run.exitCode());
        assertTrue(run.out().contains("15.0 cm"), run::out);
    }

    @Test
    void asksForARuleSetWhereThereIsNone() throws IOException {
        Path copy = Files.copy(GUIDES, folder.resolve("guides.devices.json"));
        Run run = Run.of("fit", "--library", copy, "--outer", "kes-guide-6fr-right-100", "--inner",
                "kes-guide-6fr-right-100");
        assertEquals(2, run.exitCode());
        assertTrue(run.err().contains("--rules"), run::err);
    }

    @Test
    void tellsFileLineAndColumnOfABrokenLibrary() throws IOException {
        Path broken = Files.writeString(folder.resolve("x.devices.json"), "{\n  \"format\": \"ferrule.devices\",,\n");
        Run run = Run.of("fit", "--library", broken, "--outer", "a", "--inner", "b");
        assertEquals(2, run.exitCode());
        assertTrue(run.err().contains("x.devices.json:2:"), run::err);
    }

    @Test
    void tellsWhatIsMissingOnWrongWords() {
        assertEquals(2, Run.of("fit").exitCode());
        assertEquals(2, Run.of().exitCode());
        assertEquals(2, Run.of("fitt").exitCode());
        assertEquals(0, Run.of("fit", "--help").exitCode());
    }

    private static Run fit(String outer, String inner) {
        return Run.of("fit", "--library", GUIDES, "--library", BALLOONS, "--outer", outer, "--inner", inner);
    }

    private static JsonNode json(String outer, String inner) throws IOException {
        Run run = Run.of("fit", "--library", GUIDES, "--library", BALLOONS, "--outer", outer, "--inner", inner,
                "--json");
        return new ObjectMapper().readTree(run.out());
    }

    private static BigDecimal decimal(JsonNode node, String key) {
        return new BigDecimal(node.get(key).asText());
    }
}
