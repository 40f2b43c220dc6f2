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

class PurchaseCommandTest {
    private static final Object SHELF = Run.demo("laboratory.shelf.json");
    private static final Object CASE = Run.demo("case-calcified-bend-6-fr.case.json");

    private static JsonNode purchase(Object... arguments) throws IOException {
        Run run = Run.of(arguments);
        assertTrue(run.exitCode() < 2, run::err);
        return new ObjectMapper().readTree(run.out());
    }

    @Test
    void nothingIsBoughtWhereTheShelfSuffices() throws IOException {
        JsonNode answer = purchase("purchase", SHELF, "--case", CASE, "--rungs", "0", "--json");
        assertTrue(answer.get("covered").asBoolean());
        assertEquals(0, answer.get("units").asInt());
    }

    @Test
    void moreRungsNeverNeedLess() throws IOException {
        int before = 0;
        for (int rungs = 1; rungs <= 2; rungs++) {
            JsonNode answer = purchase("purchase", SHELF, "--case", CASE, "--rungs", rungs, "--json");
            if (answer.get("covered").asBoolean()) {
                assertTrue(answer.get("units").asInt() >= before, answer::toString);
                before = answer.get("units").asInt();
            }
        }
    }

    @Test
    void whatNoPurchaseCoversIsTold() {
        Run run = Run.of("purchase", SHELF, "--case", CASE, "--rungs", "50");
        assertEquals(1, run.exitCode(), run::err);
        assertTrue(run.out().contains("of 50 can be covered"), run::out);
    }

    @Test
    void aNumberBelowNothingIsRefused() {
        Run run = Run.of("purchase", SHELF, "--case", CASE, "--rungs", "-1");
        assertEquals(2, run.exitCode());
        assertTrue(run.err().contains("--rungs -1"), run::err);
    }
}
