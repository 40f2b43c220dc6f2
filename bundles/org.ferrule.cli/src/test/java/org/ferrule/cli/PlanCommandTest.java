/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;

class PlanCommandTest {
    private static final Path CASE = Run.demo("case-calcified-bend-6-fr.case.json");

    @TempDir
    private Path folder;

    @Test
    void tellsTheWireFirstThenStepsAndWhatIsNotInThePlan() {
        Run run = Run.of("plan", CASE);
        assertEquals(0, run.exitCode(), run::err);
        int wire = run.out().indexOf("FIRST: See the wire in the distal true lumen");
        int steps = run.out().indexOf("\n1. ");
        assertTrue(wire >= 0 && wire < steps, run::out);
        assertTrue(run.out().indexOf("Not in the plan") > steps, run::out);
        assertTrue(run.out().contains("The instructions for use of every device"), run::out);
    }

    @Test
    void writesStepsWithTheirEquipmentAsJsonAndNoChanceOfTheWhole() throws IOException {
        Run run = Run.of("plan", CASE, "--json");
        JsonNode plan = new ObjectMapper().readTree(run.out());
        assertEquals("2026-04-02", plan.get("day").asText());
        assertTrue(plan.get("canGoOn").asBoolean());
        JsonNode first = plan.get("rungs").get(0);
        assertEquals(1, first.get("number").asInt());
        JsonNode pick = first.get("roles").get(0).get("picks").get(0);
        assertTrue(pick.get("expiry").asText().compareTo("2026-04-02") >= 0, pick::toString);
        assertFalse(run.out().contains("successChance"), run::out);
        assertFalse(run.out().contains("\"reach\""), run::out);
        JsonNode limit = plan.get("budgets").get(0);
        assertEquals("time", limit.get("resource").asText());
        assertTrue(limit.get("worst").asDouble() >= limit.get("expected").asDouble());
    }

    @Test
    void tellsWhatTheOrderHangsOnWhereAsked() throws IOException {
        JsonNode plan = new ObjectMapper().readTree(Run.of("plan", CASE, "--json").out());
        assertTrue(plan.get("sensitivity").isNull());
        JsonNode asked = new ObjectMapper().readTree(Run.of("plan", CASE, "--json", "--sensitivity").out())
                .get("sensitivity");
        assertEquals("stopping cost", asked.get("inputs").get(0).get("figure").asText());
        asked.get("inputs").forEach(input -> {
            assertTrue(input.get("low").isNull() || input.get("low").asDouble() <= input.get("value").asDouble());
            assertTrue(input.get("high").isNull() || input.get("high").asDouble() >= input.get("value").asDouble());
        });
        JsonNode conventional = asked.get("conventional");
        assertEquals(plan.get("rungs").size(), conventional.get("steps").size());
        assertEquals(conventional.get("loss").asDouble(), conventional.get("conventional").get("minutes").asDouble()
                - conventional.get("planned").get("minutes").asDouble(), 1e-3);
    }

    @Test
    void writesTheSheetInTheFormatOfTheFileName() throws IOException {
        Path pdf = folder.resolve("plan.pdf");
        Path svg = folder.resolve("plan.svg");
        Run run = Run.of("plan", CASE, "--pdf", pdf, "--output", svg, "--paper", "letter");
        assertEquals(0, run.exitCode(), run::err);
        assertEquals("%PDF", new String(Files.readAllBytes(pdf), 0, 4, StandardCharsets.US_ASCII));
        assertTrue(Files.readString(svg).contains("width=\"215.9mm\""));
        assertEquals(2, Run.of("plan", CASE, "--output", folder.resolve("plan.doc")).exitCode());
        assertEquals(2, Run.of("plan", CASE, "--pdf", svg).exitCode());
    }

    @Test
    void anotherDayLeavesOutWhatHasExpiredByThen() throws IOException {
        JsonNode later = new ObjectMapper().readTree(Run.of("plan", CASE, "--day", "2040-01-01", "--json").out());
        assertEquals("2040-01-01", later.get("day").asText());
        later.get("rungs").forEach(rung -> rung.get("taken").forEach(
                pick -> assertTrue(pick.get("expiry").isNull() || pick.get("expiry").asText().compareTo("2040") > 0)));
        assertEquals(2, Run.of("plan", CASE, "--day", "tomorrow").exitCode());
    }

    @Test
    void nothingThatCanBeDoneIsOne() {
        Run run = Run.of("plan", Run.demo("case-out-of-reach-6-fr.case.json"));
        assertEquals(1, run.exitCode(), run::err);
        assertTrue(run.out().contains("Nothing on the ladder can be done as things stand"), run::out);
        String reasons = run.out().substring(run.out().indexOf("Not in the plan"),
                run.out().indexOf("The order rests"));
        assertTrue(reasons.lines().filter(l -> l.contains("does not serve")).allMatch(l -> l.length() < 260), reasons);
        String whole = Run.of("plan", Run.demo("case-out-of-reach-6-fr.case.json"), "--why").out();
        assertTrue(whole.contains("Too short by 14.0 cm when hub and valve take 8.0 cm"), whole);
        assertFalse(reasons.contains("Too short by 14.0 cm when hub and valve take 8.0 cm"), reasons);
    }

    @Test
    void brokenInputIsTwoAndNamesThePlace() throws IOException {
        Path broken = Files.writeString(folder.resolve("broken.case.json"), "{\"format\":\"ferrule.case\",\n oops}");
        Run run = Run.of("plan", broken);
        assertEquals(2, run.exitCode());
        assertTrue(run.err().contains("broken.case.json:2:"), run::err);
        assertEquals(2, Run.of("plan", folder.resolve("none.case.json")).exitCode());
    }
}
