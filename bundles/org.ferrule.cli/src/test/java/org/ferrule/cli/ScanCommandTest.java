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

class ScanCommandTest {
    /** The plain text example of "UDI formats by issuing agency", version 1.3, 27 January 2017. */
    private static final String EXAMPLE = "(01)51022222233336(11)141231(17)150707(10)A213B1(21)1234";

    @Test
    void readsThePublishedExample() throws IOException {
        Run run = Run.of("scan", EXAMPLE, "--json");
        assertEquals(0, run.exitCode(), run::err);
        JsonNode code = new ObjectMapper().readTree(run.out());
        assertEquals("51022222233336", code.get("di").asText());
        assertEquals("2014-12-31", code.get("made").asText());
        assertEquals("2015-07-07", code.get("expiry").asText());
        assertEquals("A213B1", code.get("lot").asText());
        assertEquals("1234", code.get("serial").asText());
        assertEquals("GS1", code.get("scheme").asText());
    }

    @Test
    void readsWhatAScannerTypes() throws IOException {
        JsonNode code = new ObjectMapper().readTree(
                Run.of("scan", "]d201510222222333361714123110A213B1\u001d211234", "--json").out());
        assertEquals("A213B1", code.get("lot").asText());
        assertEquals("1234", code.get("serial").asText());
    }

    @Test
    void aWrongCheckDigitIsToldWithItsPlace() {
        Run run = Run.of("scan", "(01)51022222233337");
        assertEquals(2, run.exitCode());
        assertTrue(run.err().contains("character 18: expected check digit 6"), run::err);
    }
}
