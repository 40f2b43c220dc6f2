/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;

import org.junit.jupiter.api.Test;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;

class ScanCommandTest {
    /** Check digit by GS1 General Specifications, modulo 10 with weights 3 and 1 (computed). */
    private static final String CODE = "(01)09506000134352(17)270228(11)250301(10)A213(21)77";

    @Test
    void readsPartsWithDatesAsIsoWritesThem() throws IOException {
        Run run = Run.of("scan", CODE, "--day", "2026-04-02", "--json");
        assertEquals(0, run.exitCode(), run::err);
        JsonNode code = new ObjectMapper().readTree(run.out());
        assertEquals("GS1", code.get("scheme").asText());
        assertEquals("09506000134352", code.get("di").asText());
        assertEquals("A213", code.get("lot").asText());
        assertEquals("77", code.get("serial").asText());
        assertEquals("2027-02-28", code.get("expiry").asText());
        assertEquals("2025-03-01", code.get("made").asText());
    }

    @Test
    void tellsOneLineForEachPart() {
        Run run = Run.of("scan", CODE, "--day", "2026-04-02");
        assertTrue(run.out().lines().toList().containsAll(List.of("lot: A213", "use by: 2027-02-28")),
                run::out);
    }

    @Test
    void whatIsNotThereIsNull() throws IOException {
        JsonNode code = new ObjectMapper().readTree(Run.of("scan", "09506000134352", "--json").out());
        assertTrue(code.get("lot").isNull() && code.get("expiry").isNull(), code::toString);
    }

    @Test
    void aCodeThatCannotBeReadNamesTheCharacter() {
        Run run = Run.of("scan", "(01)09506000134353");
        assertEquals(2, run.exitCode());
        assertTrue(run.err().matches("(?s).*character \\d+: expected .*"), run::err);
    }
}
