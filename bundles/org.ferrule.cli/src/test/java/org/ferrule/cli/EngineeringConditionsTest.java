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

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;

/** An engineer's questions with what a chart can say: devices inside, extensions, reach. */
class EngineeringConditionsTest {
    private static final List<Object> KISSING = List.of("--library", Run.demo("access-and-guides.devices.json"),
            "--library", Run.demo("balloons.devices.json"), "--outer", "kes-guide-7fr-left-100", "--inner",
            "dun-sc-300-15", "--inside", "dun-sc-250-15,ahead=10 cm", "--reach", "8 cm");

    private static Run run(String word, String... more) {
        List<Object> words = new ArrayList<>(List.of(word));
        words.addAll(KISSING);
        words.addAll(List.of(more));
        return Run.of(words.toArray());
    }

    @Test
    void budgetNamesWhatLiesBeside() throws IOException {
        Run run = run("budget", "--json");
        assertEquals(1, run.exitCode(), run::err);
        JsonNode budget = new ObjectMapper().readTree(run.out()).get("budget");
        assertEquals(List.of("kes-guide-7fr-left-100", "dun-sc-300-15", "dun-sc-250-15"),
                budget.get("contributors").findValuesAsText("device"));
        assertEquals("fits", budget.get("afterSharing").asText());
    }

    @Test
    void secondOpinionAgreesBesideAnotherDevice() throws IOException {
        JsonNode all = new ObjectMapper().readTree(run("second-opinion", "--samples", "50", "--json").out());
        assertEquals(2, all.size());
        for (JsonNode opinion : all) {
            assertTrue(opinion.get("agrees").asBoolean(), opinion::toString);
            assertEquals(0, opinion.get("undecided").asInt());
        }
    }

    @Test
    void secondOpinionAgreesThroughAnExtension() {
        Run run = Run.of("second-opinion", "--library", Run.demo("access-and-guides.devices.json"), "--library",
                Run.demo("extensions-and-microcatheters.devices.json"), "--library",
                Run.demo("balloons.devices.json"), "--outer", "kes-guide-7fr-left-100", "--inner", "dun-sc-250-15",
                "--through", "pel-extension-7fr,protrusion=8 cm", "--reach", "4 cm", "--samples", "50");
        assertEquals(0, run.exitCode(), run::err);
        assertTrue(run.out().contains("2 of 2 compared"), run::out);
    }
}
