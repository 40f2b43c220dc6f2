/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;

class ShelfCommandTest {
    private static final String SHELF = """
            {"format":"ferrule.shelf","version":1,"title":"Small shelf","items":[
              {"id":"balloon","name":"Small balloon","parLevel":2,
               "lots":[{"lot":"A","expiry":"2026-03-31","quantity":3},{"lot":"B","expiry":"2027-03-31","quantity":1}]},
              {"id":"wire","parLevel":1,"lots":[{"lot":"W","expiry":"2028-01-31","quantity":1}]}]}
            """;

    @TempDir
    private Path folder;

    private Path shelf(String text) throws IOException {
        return Files.writeString(folder.resolve("small.shelf.json"), text);
    }

    @Test
    void tellsWhatIsBelowParAndWhatHasExpiredOnTheDay() throws IOException {
        Run run = Run.of("shelf", shelf(SHELF), "--day", "2026-04-02");
        assertEquals(1, run.exitCode(), run::err);
        assertTrue(run.out().contains("Small balloon (balloon): 1 usable, 3 expired, par 2"), run::out);
        assertTrue(run.out().contains("Small balloon (balloon): 1 of 2, 1 missing"), run::out);
        assertTrue(run.out().contains("lot A: 3 of use by 2026-03-31"), run::out);
        assertEquals(0, Run.of("shelf", shelf(SHELF), "--day", "2026-03-31").exitCode());
    }

    @Test
    void writesTheSameAsJson() throws IOException {
        JsonNode node = new ObjectMapper().readTree(
                Run.of("shelf", shelf(SHELF), "--day", "2026-04-02", "--json").out());
        assertEquals("2026-04-02", node.get("day").asText());
        assertEquals("[{\"item\":\"balloon\",\"usable\":1,\"par\":2,\"missing\":1}]", node.get("belowPar").toString());
        assertEquals("A", node.get("expired").get(0).get("lot").asText());
        assertEquals(0, node.get("cases").size());
    }

    @Test
    void casesShareTheShelf() throws IOException {
        Path file = Run.demo("case-calcified-bend-6-fr.case.json");
        JsonNode node = new ObjectMapper().readTree(Run.of("shelf", Run.demo("laboratory.shelf.json"), "--day",
                "2026-04-02", "--case", file, "--json").out());
        JsonNode planned = node.get("cases").get(0);
        assertEquals("case-calcified-bend-6-fr.case.json", planned.get("case").asText());
        assertTrue(planned.get("needs").size() > 0);
        assertTrue(planned.get("needs").get(0).get("need").asText().contains(": "), planned::toString);
        assertTrue(planned.get("bailOut").size() > 0);
    }

    @Test
    void brokenInputIsTwoAndNamesThePlace() throws IOException {
        Run run = Run.of("shelf", shelf("{\"format\":\"ferrule.shelf\",\n oops}"));
        assertEquals(2, run.exitCode());
        assertTrue(run.err().contains("small.shelf.json:2:"), run::err);
    }
}
