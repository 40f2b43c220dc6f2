/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;

class CloseCommandTest {
    private static final String TECHNIQUES = "balloon-does-not-cross.techniques.json";
    private static final String SHELF = "laboratory.shelf.json";

    @TempDir
    private Path folder;
    private Path file;

    @BeforeEach
    void copyTheDemo() throws IOException {
        try (Stream<Path> all = Files.list(Run.demo())) {
            all.filter(path -> path.toString().endsWith(".json")).forEach(path -> {
                try {
                    Files.copy(path, folder.resolve(path.getFileName()));
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            });
        }
        file = folder.resolve("case-with-a-log-6-fr.case.json");
    }

    private static JsonNode read(Path path) throws IOException {
        return new ObjectMapper().readTree(Files.readAllBytes(path));
    }

    /** The tries of a technique, or the lots of an item. */
    private JsonNode find(String document, String list, String id) throws IOException {
        for (JsonNode each : read(folder.resolve(document)).get(list)) {
            if (each.get("id").asText().equals(id)) {
                return each;
            }
        }
        throw new AssertionError(id + " is not in " + document);
    }

    @Test
    void freezesPlanDevicesAndDocuments() throws IOException, NoSuchAlgorithmException {
        assertEquals(0, Run.of("close", file, "--ended", "stopped", "--day", "2026-04-09").exitCode());
        JsonNode closing = read(file).get("closing");
        assertEquals("2026-04-09", closing.get("closed").asText());
        assertEquals("small-balloon", closing.get("plan").get(0).get("move").asText());
        assertEquals("S125-2507", closing.get("devices").get(0).get("lot").asText());
        for (JsonNode hash : closing.get("hashes")) {
            byte[] bytes = Files.readAllBytes(folder.resolve(hash.get("file").asText()));
            assertEquals(HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes)),
                    hash.get("sha256").asText());
        }
        assertTrue(closing.get("hashes").size() >= 4, closing::toString);
        assertEquals(0, Run.of("check", file).exitCode());
    }

    @Test
    void aClosedCaseIsNotClosedAgainAndItsPlanSaysSo() throws IOException {
        assertEquals(0, Run.of("close", file, "--ended", "stopped", "--day", "2026-04-09").exitCode());
        byte[] record = Files.readAllBytes(file);
        Run again = Run.of("close", file, "--ended", "stopped", "--day", "2026-05-01", "--count");
        assertEquals(2, again.exitCode());
        assertTrue(again.err().contains("was closed on 2026-04-09"), again::err);
        assertArrayEquals(record, Files.readAllBytes(file));
        Path sheet = folder.resolve("plan.svg");
        Run plan = Run.of("plan", file, "--output", sheet);
        assertTrue(plan.out().contains("Closed on 2026-04-09: stopped"), plan::out);
        assertTrue(Files.readString(sheet).contains("Closed on 2026-04-09"), "the sheet says so too");
        assertEquals("2026-04-09", new ObjectMapper().readTree(Run.of("plan", file, "--json").out()).get("closed")
                .asText());
    }

    @Test
    void theRecordIsToldAndComparedWithTheDocumentsOfToday() throws IOException {
        assertEquals(0, Run.of("close", file, "--ended", "stopped", "--day", "2026-04-09").exitCode());
        Path shelf = folder.resolve(SHELF);
        Files.writeString(shelf, Files.readString(shelf) + "\n");
        JsonNode record = new ObjectMapper().readTree(Run.of("plan", file, "--json").out()).get("record");
        assertEquals("stopped", record.get("ended").asText());
        JsonNode first = record.get("plan").get(0);
        assertEquals("small-balloon", first.get("move").asText());
        assertEquals("failed", first.get("outcomes").get(0).asText());
        assertEquals("S125-2507", first.get("equipment").get(0).get("opened").get(0).get("lot").asText());
        JsonNode time = record.get("totals").get(0);
        assertEquals(time.get("before").asInt() + time.get("logged").asInt(), time.get("total").asInt());
        assertEquals("changed since", today(record, SHELF));
        assertEquals("unchanged", today(record, TECHNIQUES));
        assertTrue(Run.of("plan", file).out().contains("1 of its documents is not what it was then"));
    }

    private static String today(JsonNode record, String document) {
        for (JsonNode each : record.get("documents")) {
            if (each.get("file").asText().equals(document)) {
                return each.get("today").asText();
            }
        }
        throw new AssertionError(document + " is not in the record");
    }

    @Test
    void theRecordIsToldThoughADocumentIsGone() throws IOException {
        assertEquals(0, Run.of("close", file, "--ended", "stopped", "--day", "2026-04-09").exitCode());
        Files.delete(folder.resolve(TECHNIQUES));
        Run text = Run.of("plan", file);
        assertEquals(2, text.exitCode(), "it cannot be planned any more");
        assertTrue(text.out().contains("Closed on 2026-04-09"), text::out);
        assertTrue(text.out().contains("not found"), text::out);
        Run json = Run.of("plan", file, "--json");
        assertEquals(2, json.exitCode());
        assertEquals("not found", today(new ObjectMapper().readTree(json.out()).get("record"), TECHNIQUES));
    }

    @Test
    void countsAndTakesUnitsWhereAsked() throws IOException {
        int failures = find(TECHNIQUES, "techniques", "small-balloon").get("tries").get(0).get("failures").asInt();
        int units = find(SHELF, "items", "pel-extension-6fr").get("lots").get(0).get("quantity").asInt();
        Run run = Run.of("close", file, "--ended", "stopped", "--count", "--take-units");
        assertEquals(0, run.exitCode(), run::err);
        assertEquals(failures + 1,
                find(TECHNIQUES, "techniques", "small-balloon").get("tries").get(0).get("failures").asInt());
        assertEquals(units - 1, find(SHELF, "items", "pel-extension-6fr").get("lots").get(0).get("quantity").asInt());
    }

    @Test
    void whatTheLogDoesNotSayIsRefusedAndNothingIsWritten() throws IOException {
        byte[] before = Files.readAllBytes(file);
        Run run = Run.of("close", file, "--ended", "crossed");
        assertEquals(2, run.exitCode());
        assertTrue(run.err().contains("by its log the device is not across"), run::err);
        assertArrayEquals(before, Files.readAllBytes(file));
    }

    @Test
    void aCaseWithoutAShelfStaysOpenWhereUnitsAreToBeTaken() throws IOException {
        Files.writeString(file, Files.readString(file).replace("  \"shelf\": \"" + SHELF + "\",\n", ""));
        byte[] before = Files.readAllBytes(file);
        byte[] techniques = Files.readAllBytes(folder.resolve(TECHNIQUES));
        Run run = Run.of("close", file, "--ended", "stopped", "--count", "--take-units");
        assertEquals(2, run.exitCode());
        assertTrue(run.err().contains("the case names no shelf"), run::err);
        assertArrayEquals(before, Files.readAllBytes(file));
        assertArrayEquals(techniques, Files.readAllBytes(folder.resolve(TECHNIQUES)));
    }

    @Test
    void aClosedCaseIsNotClosedAgain() {
        assertEquals(0, Run.of("close", file, "--ended", "stopped", "--day", "2026-04-09").exitCode());
        Run again = Run.of("close", file, "--ended", "stopped");
        assertEquals(2, again.exitCode());
        assertTrue(again.err().contains("was closed on 2026-04-09"), again::err);
    }
}
