/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;

class ShelfSheetCommandTest {
    @TempDir
    private Path folder;
    private Path shelf;

    @BeforeEach
    void copyTheShelf() throws IOException {
        shelf = Files.copy(Run.demo("laboratory.shelf.json"), folder.resolve("laboratory.shelf.json"));
    }

    @ParameterizedTest
    @ValueSource(strings = { "shelf.csv", "shelf.xlsx" })
    void whatIsWrittenIsReadBackAndChangesNothing(String name) throws IOException {
        byte[] before = Files.readAllBytes(shelf);
        Path sheet = folder.resolve(name);
        assertEquals(0, Run.of("shelf", shelf, "--out", sheet).exitCode());
        Run back = Run.of("shelf", shelf, "--in", sheet, "--write", "--remove-missing");
        assertEquals(0, back.exitCode(), back::err);
        assertEquals("nothing changes", back.out().strip());
        assertArrayEquals(before, Files.readAllBytes(shelf));
    }

    @Test
    void aSheetIsOnlyLookedAtUntilItIsToBeWritten() throws IOException {
        byte[] before = Files.readAllBytes(shelf);
        Path sheet = Files.writeString(folder.resolve("delivery.csv"), """
                item,lot,expiry,quantity,colour
                brn-sheath-6fr-11,BS6-2508,2028-08-31,8,red
                """);
        Run look = Run.of("shelf", shelf, "--in", sheet, "--json");
        assertEquals(0, look.exitCode(), look::err);
        assertTrue(look.err().contains("the column \"colour\" means nothing here"), look::err);
        JsonNode changes = new ObjectMapper().readTree(look.out()).get("changes");
        assertEquals(1, changes.size(), changes::toString);
        assertEquals("lot BS6-2508", changes.get(0).get("what").asText());
        assertArrayEquals(before, Files.readAllBytes(shelf));
        assertEquals(0, Run.of("shelf", shelf, "--in", sheet, "--write").exitCode());
        JsonNode item = new ObjectMapper().readTree(Files.readAllBytes(shelf)).get("items").get(0);
        assertEquals(8, item.get("lots").get(0).get("quantity").asInt());
        assertEquals("count", item.get("source").asText());
        assertEquals(4, item.get("parLevel").asInt());
        assertEquals("cabinet 1, shelf A", item.get("lots").get(0).get("location").asText());
    }

    @Test
    void everyFaultIsToldWithItsRowAndNothingIsWritten() throws IOException {
        byte[] before = Files.readAllBytes(shelf);
        Path sheet = Files.writeString(folder.resolve("broken.csv"),
                "item,lot,expiry,quantity\na,A,soon,1\nb,B,2028-01-31,many\n");
        Run run = Run.of("shelf", shelf, "--in", sheet, "--write");
        assertEquals(2, run.exitCode());
        assertTrue(run.err().contains("row 2, column \"expiry\": \"soon\", expected a date"), run::err);
        assertTrue(run.err().contains("row 3, column \"quantity\": \"many\""), run::err);
        assertArrayEquals(before, Files.readAllBytes(shelf));
    }

    @Test
    void wordsThatDoNotGoTogetherAreRefused() {
        assertEquals(2, Run.of("shelf", shelf, "--write").exitCode());
        assertEquals(2, Run.of("shelf", shelf, "--out", folder.resolve("shelf.doc")).exitCode());
        assertEquals(2, Run.of("shelf", shelf, "--in", folder.resolve("none.csv")).exitCode());
    }
}
