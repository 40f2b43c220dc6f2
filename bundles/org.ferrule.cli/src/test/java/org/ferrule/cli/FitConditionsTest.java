/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;

class FitConditionsTest {
    private static final List<Object> QUESTION = List.of("fit", "--library",
            Run.demo("access-and-guides.devices.json"), "--library",
            Run.demo("extensions-and-microcatheters.devices.json"), "--library", Run.demo("wires.devices.json"),
            "--library", Run.demo("balloons.devices.json"), "--outer", "kes-guide-7fr-left-100", "--inner",
            "san-rx-200-20");

    @Test
    void statesNoConditionsWhereNoneAreAsked() throws IOException {
        JsonNode conditions = json().get("conditions");
        assertEquals("{\"inside\":[],\"through\":null,\"bends\":[],\"afterInflation\":false}", conditions.toString());
    }

    @Test
    void statesEveryConditionThatIsAsked() throws IOException {
        JsonNode conditions = json("--inside", "pel-micro-135, ahead=3 cm ,wire=hes-workhorse-190", "--inside",
                "dun-sc-100-10,ahead=-20 mm,used", "--through", "pel-extension-7fr,protrusion=10 cm", "--bend",
                "20 mm", "--bend", "1.5 cm,60.5,vessel", "--bend", "15 mm,vessel=3 mm", "--after-inflation")
                .get("conditions");
        assertEquals("""
                {"inside":[{"device":"pel-micro-135","wireMm":0.3556,"tipAheadMm":30,"used":false},\
                {"device":"dun-sc-100-10","wireMm":0.3556,"tipAheadMm":-20,"used":true}],\
                "through":{"extension":"pel-extension-7fr","lumen":"tube","protrusionMm":100},\
                "bends":[{"where":"lumen","radiusMm":20,"angleDegrees":null,"vesselMm":null},\
                {"where":"vessel","radiusMm":15,"angleDegrees":60.5,"vesselMm":null},\
                {"where":"vessel","radiusMm":15,"angleDegrees":null,"vesselMm":3}],"afterInflation":true}""",
                conditions.toString());
    }

    @Test
    void saysTheConditionsBesideTheVerdict() {
        Run run = fit("--inside", "dun-sc-100-10,ahead=-20 mm,used", "--bend", "20 mm,90");
        assertTrue(run.out().contains("its tip 20 mm inside the outer tip"), run::out);
        assertTrue(run.out().contains("used before"), run::out);
        assertTrue(run.out().contains("20 mm (90\u00b0)"), run::out);
    }

    /** Closed form of a cylinder in a torus: L squared/4 = (2R + d)(D - d), checked by sampling one; computed. */
    @Test
    void tellsToWhatRadiusAVesselMustStraighten() throws IOException {
        Run run = Run.of("fit", "--library", Run.demo("access-and-guides.devices.json"), "--library",
                Run.demo("stents-and-atherectomy.devices.json"), "--outer", "kes-guide-7fr-left-100", "--inner",
                "yst-stent-300-48", "--bend", "15 mm,vessel=3 mm", "--json");
        JsonNode answer = new ObjectMapper().readTree(run.out());
        JsonNode room = answer.get("evidence").findParents("leastRadiusMm").get(0);
        double length = room.get("rigidLengthMm").asDouble();
        double diameter = room.get("deviceDiameterMm").asDouble();
        double expected = (length * length / (4 * (3 - diameter)) - diameter) / 2;
        assertEquals(expected, room.get("leastRadiusMm").asDouble(), 1e-4);
        assertTrue(answer.get("reasons").findValuesAsText("code").contains("vessel must straighten"), run::out);
    }

    @Test
    void showsTheEvidenceOfEachPhase() throws IOException {
        JsonNode answer = json();
        assertTrue(answer.get("evidence").isArray());
        assertTrue(answer.get("out").get("evidence").isArray());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            --inside  | dun-sc-100-11                   | dun-sc-100-10
            --inside  | dun-sc-100-10,ahead=12          | ahead=12
            --inside  | dun-sc-100-10,wire=hes-nothing  | hes-nothing
            --inside  | dun-sc-100-10,usd               | "usd" is not understood
            --inside  | ''                              | no device is called
            --through | pel-extension-7fr#second        | "second"
            --through | pel-extension-7fr,protrusion=x  | "x" cannot be read
            --through | pel-extension-7fr,protrusion=60 cm | cannot protrude
            --bend    | 20                              | unit
            --bend    | 0 mm                            | more than 0
            --bend    | 20 mm,-10                       | more than 0
            --bend    | 20 mm,steep                     | "steep" cannot be read
            --bend    | 20 mm,vessel=0 mm               | more than 0
            --bend    | 20 mm,vessel=3                  | unit
            --bend    | 20 mm,90,lumen=3 mm             | "lumen=3 mm" is not understood
            --bend    | 20 mm,361                       | full turn
            """)
    void refusesWhatItCannotAskAndNamesOptionAndText(String option, String text, String reason) {
        Run run = fit(option, text);
        assertEquals(2, run.exitCode());
        assertTrue(run.err().contains(option + " \"" + text + "\""), run::err);
        assertTrue(run.err().contains(reason), run::err);
        assertEquals("", run.out());
    }

    @ParameterizedTest
    @CsvSource({ "--through, pel-extension-7fr", "--inside, dun-sc-100-10" })
    void loadsNothingOverAWireWithOthersInTheLumen(String option, String device) {
        Run run = fit("--over-wire", option, device);
        assertEquals(2, run.exitCode());
        assertTrue(run.err().contains("tip first only"), run::err);
    }

    private static JsonNode json(String... conditions) throws IOException {
        List<String> options = new ArrayList<>(List.of(conditions));
        options.add("--json");
        Run run = fit(options.toArray(String[]::new));
        assertTrue(run.exitCode() < 2, run::err);
        return new ObjectMapper().readTree(run.out());
    }

    private static Run fit(String... conditions) {
        List<Object> words = new ArrayList<>(QUESTION);
        words.addAll(List.of(conditions));
        return Run.of(words.toArray());
    }
}
