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

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;

class PlanCommandTest {

    private static JsonNode plan(String name) throws IOException {
        Run run = Run.of("plan", Run.demo(name + ".case.json"), "--json");
        assertTrue(run.exitCode() < 2, run::err);
        return new ObjectMapper().readTree(run.out());
    }

    @ParameterizedTest
    @ValueSource(strings = { "case-calcified-bend-6-fr", "case-occlusion-7-fr", "case-extension-in-place-6-fr",
        "case-burr-wire-in-place-8-fr", "case-small-budget-5-fr", "case-with-a-log-6-fr" })
    void everyRungHasWhatItNeedsFromTheShelf(String name) throws IOException {
        JsonNode plan = plan(name);
        assertTrue(plan.get("canGoOn").asBoolean());
        assertTrue(plan.get("exact").asBoolean());
        assertFalse(plan.get("rungs").isEmpty());
        for (JsonNode rung : plan.get("rungs")) {
            rung.get("roles").forEach(role -> assertTrue(role.has("device") || !role.has("worstClearanceMm"),
                    () -> rung.get("move") + ": " + role));
            rung.get("taken").forEach(pick -> assertTrue(pick.get("expiry").asText().compareTo(
                    plan.get("day").asText()) >= 0, pick::toString));
        }
    }

    @Test
    void nothingToBeDoneIsExitCodeOne() throws IOException {
        Run run = Run.of("plan", Run.demo("case-out-of-reach-6-fr.case.json"));
        assertEquals(1, run.exitCode(), run::err);
        assertTrue(run.out().contains("Nothing on the ladder can be done."), run::out);
        assertEquals(0, plan("case-out-of-reach-6-fr").get("rungs").size());
    }

    @Test
    void tellsTheWireCheckFirstAndTheCautionLast() {
        Run run = Run.of("plan", Run.demo("case-calcified-bend-6-fr.case.json"));
        assertEquals(0, run.exitCode(), run::err);
        assertTrue(run.out().indexOf("two orthogonal views") < run.out().indexOf("\n1. "), run::out);
        assertTrue(run.out().strip().endsWith("The instructions for use and the operator decide."), run::out);
        assertFalse(run.out().contains("% chance of crossing"), run::out);
    }

    @Test
    void aCaseThatCannotBeReadSaysWhere(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("broken.case.json");
        Files.writeString(file, "{\n  \"format\": \"ferrule.case\",\n  \"version\": 1,\n  \"aim\": 3\n}\n");
        Run run = Run.of("plan", file);
        assertEquals(2, run.exitCode());
        assertTrue(run.err().contains("broken.case.json:4:"), run::err);
    }

    @Test
    void aMissingCaseIsNamed() {
        Run run = Run.of("plan", "nowhere.case.json");
        assertEquals(2, run.exitCode());
        assertTrue(run.err().contains("there is no file nowhere.case.json"), run::err);
    }
}
