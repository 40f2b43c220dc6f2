/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;

import org.junit.jupiter.api.Test;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;

class ShelfCommandTest {
    private static final Object SHELF = Run.demo("laboratory.shelf.json");

    private static JsonNode json(Object... arguments) throws IOException {
        Run run = Run.of(arguments);
        assertTrue(run.exitCode() < 2, run::err);
        return new ObjectMapper().readTree(run.out());
    }

    @Test
    void tellsWhatHasExpiredOrIsBelowPar() throws IOException {
        JsonNode shelf = json("shelf", SHELF, "--day", "2026-04-02", "--json");
        assertTrue(shelf.get("items").size() >= 60, () -> shelf.get("items").size() + " items");
        shelf.get("expired")
                .forEach(lot -> assertTrue(lot.get("expiry").asText().compareTo("2026-04-02") < 0, lot::toString));
        assertTrue(shelf.get("expired").size() > 0);
        shelf.get("belowPar").forEach(item -> assertTrue(item.get("missing").asInt() > 0, item::toString));
        assertEquals(1, Run.of("shelf", SHELF, "--day", "2026-04-02").exitCode());
    }

    @Test
    void onTheDayOfExpiryALotStillCounts() throws IOException {
        JsonNode before = json("shelf", SHELF, "--day", "2025-11-30", "--json");
        JsonNode after = json("shelf", SHELF, "--day", "2025-12-01", "--json");
        assertEquals(before.get("expired").size() + 1, after.get("expired").size());
    }

    @Test
    void tellsHowReadyACaseIs() throws IOException {
        JsonNode shelf = json("shelf", SHELF, "--case", Run.demo("case-calcified-bend-6-fr.case.json"), "--json");
        JsonNode ready = shelf.get("cases").get("case-calcified-bend-6-fr");
        assertEquals("missing", ready.get("orbital").get("readiness").asText(), ready::toString);
    }

    @Test
    void aDayThatIsNoneIsRefused() {
        Run run = Run.of("shelf", SHELF, "--day", "02.04.2026");
        assertEquals(2, run.exitCode());
        assertTrue(run.err().contains("--day"), run::err);
    }

    @Test
    void findsTheSmallestPurchase() throws IOException {
        Object file = Run.demo("case-calcified-bend-6-fr.case.json");
        JsonNode one = json("purchase", SHELF, "--case", file, "--json");
        assertTrue(one.get("covered").asBoolean(), one::toString);
        JsonNode many = json("purchase", SHELF, "--case", file, "--rungs", "50", "--json");
        assertEquals(false, many.get("covered").asBoolean());
        assertTrue(many.get("gaps").size() > 0);
    }
}
