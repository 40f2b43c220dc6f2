/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;

class StackCommandTest {
    private static final List<Object> LIBRARIES = List.of("stack", "--library",
            Run.demo("access-and-guides.devices.json"), "--library",
            Run.demo("extensions-and-microcatheters.devices.json"), "--library", Run.demo("wires.devices.json"),
            "--library", Run.demo("balloons.devices.json"));

    @Test
    void asksEveryLevelInTheOneAround() throws IOException {
        JsonNode answer = json("brn-sheath-6fr-11", "brn-guide-6fr-left-100,ahead=80 cm", "pel-micro-150,ahead=12 cm",
                "hes-workhorse-300,ahead=5 cm");
        assertEquals("fits", answer.get("verdict").asText());
        assertEquals(4, answer.get("levels").size());
        assertEquals(0, answer.get("levels").get(0).get("crossings").size());
        JsonNode crossing = answer.get("levels").get(2).get("crossings").get(0);
        assertEquals("brn-guide-6fr-left-100", crossing.get("outer").asText());
        assertEquals("pel-micro-150", crossing.get("inner").asText());
    }

    /** 11 cm of sheath and 90 cm beyond it are 101 cm, one more than the guide has (computed). */
    @Test
    void tellsHowFarEachDeviceReaches() throws IOException {
        JsonNode tips = json("brn-sheath-6fr-11", "brn-guide-6fr-left-100,ahead=90 cm").get("tips");
        assertEquals(0, new BigDecimal(tips.get(1).get("fromHubMm").asText()).compareTo(new BigDecimal(1010)));
        assertEquals(0, new BigDecimal(tips.get(1).get("outsideMm").asText()).compareTo(new BigDecimal(-10)));
    }

    @Test
    void asksDevicesSideBySideInTheirOrder() throws IOException {
        JsonNode answer = json("brn-guide-6fr-left-100", "dun-sc-250-15,ahead=10 cm and dun-nc-250-12,ahead=8 cm");
        JsonNode level = answer.get("levels").get(1);
        assertEquals("[\"dun-sc-250-15\"]", level.get("beside").toString());
        assertEquals(2, level.get("crossings").size());
        assertEquals("blocked", level.get("crossings").get(1).get("verdict").asText());
        assertEquals("blocked", answer.get("verdict").asText());
    }

    @Test
    void comparesTheOutermostDeviceWithTheVessel() throws IOException {
        JsonNode access = json("brn-sheath-6fr-11", "--access", "radial artery=2.4 mm").get("access");
        assertEquals("radial artery", access.get("vessel").asText());
        assertTrue(access.get("high").asDouble() > 1.1, access::toString);
    }

    @Test
    void saysWhatDecides() {
        Run run = stack("brn-guide-6fr-left-100", "kes-guide-7fr-left-100");
        assertEquals(1, run.exitCode(), run::err);
        assertTrue(run.out().startsWith("in:\n  Weakest: Guiding catheter 7 Fr"), run::out);
        assertTrue(run.out().contains("\nout:\n"), run::out);
        assertTrue(run.out().contains("The instructions for use decide."), run::out);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            brn-guide-6fr-left-10              | LEVEL "brn-guide-6fr-left-10": no device is called
            brn-guide-6fr-left-100#second      | "second"
            brn-guide-6fr-left-100,ahead=12    | ahead=12
            brn-guide-6fr-left-100,deep        | "deep" is not understood
            wen-valve-standard                 | begins with a device that lies in the vessel
            """)
    void refusesALevelThatItCannotAskAndNamesIt(String level, String reason) {
        Run run = stack(level, "hes-workhorse-190");
        assertEquals(2, run.exitCode());
        assertTrue(run.err().contains(reason), run::err);
        assertEquals("", run.out());
    }

    @ParameterizedTest
    @CsvSource({ "2.4 mm", "radial artery=2.4" })
    void refusesAnAccessThatItCannotRead(String access) {
        Run run = stack("brn-sheath-6fr-11", "--access", access);
        assertEquals(2, run.exitCode());
        assertTrue(run.err().contains("--access \"" + access + "\""), run::err);
    }

    private static JsonNode json(String... words) throws IOException {
        List<String> all = new ArrayList<>(List.of(words));
        all.add("--json");
        Run run = stack(all.toArray(String[]::new));
        assertTrue(run.exitCode() < 2, run::err);
        return new ObjectMapper().readTree(run.out());
    }

    private static Run stack(String... words) {
        List<Object> all = new ArrayList<>(LIBRARIES);
        all.addAll(List.of(words));
        return Run.of(all.toArray());
    }
}
