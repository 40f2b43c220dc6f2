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

import org.ferrule.engine.document.DocumentHashes;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.fasterxml.jackson.databind.ObjectMapper;

/** A chart that was signed off says whether that still holds. */
class SignedChartTest {
    private static final String SIGNED = """
            {
              "format": "ferrule.chart", "version": 1, "title": "Small chart",
              "libraries": ["small.devices.json"], "rules": "small.rules.json",
              "outer": {"kinds": ["guide catheter"]},
              "inner": {"devices": ["rod"]},
              "signOff": {
                "by": "AB", "date": "2026-04-02", "ruleSet": "Small rules",
                "documents": [{"file": "small.rules.json", "sha256": "%s"}, {"file": "small.devices.json", "sha256": "%s"}],
                "inner": ["small.devices.json!rod"],
                "rows": [{"outer": "small.devices.json!narrow#guide", "in": "%s"},
                  {"outer": "small.devices.json!wide#guide", "in": "f"}]
              }
            }
            """;

    @TempDir
    private Path folder;
    private Path chart;

    @BeforeEach
    void write() throws IOException {
        SmallLaboratory.in(folder);
        chart = folder.resolve("signed.chart.json");
    }

    /** Of the narrow guide is said what the verdict was then. */
    private void sign(char narrow) throws IOException {
        Files.writeString(chart, SIGNED.formatted(hash("small.rules.json"), hash("small.devices.json"), narrow));
    }

    private String hash(String file) throws IOException {
        return DocumentHashes.sha256(Files.readAllBytes(folder.resolve(file)));
    }

    @Test
    void saysThatNothingHasChanged() throws IOException {
        sign('t');
        Run run = Run.of("chart", chart, "--json");
        assertTrue(run.err().contains("Signed off by AB on 2026-04-02; nothing has changed since."), run::err);
        assertTrue(new ObjectMapper().readTree(run.out()).isArray());
        assertFalse(Run.of("check", chart).out().contains("NOT UP TO DATE"));
    }

    @Test
    void listsAVerdictThatHasChangedAndCountsAsAProblem() throws IOException {
        sign('f');
        Run run = Run.of("chart", chart, "--json");
        assertTrue(run.err().contains("NOT UP TO DATE: signed off by AB on 2026-04-02."), run::err);
        assertTrue(run.err().contains("rod in narrow: going in fits, now tight"), run::err);
        assertTrue(new ObjectMapper().readTree(run.out()).isArray());
        Run check = Run.of("check", chart);
        assertEquals(1, check.exitCode());
        assertTrue(check.out().contains("warning: NOT UP TO DATE"), check::out);
    }

    @Test
    void tellsThatALibraryIsNotTheDocumentThatItWas() throws IOException {
        sign('t');
        Path library = folder.resolve("small.devices.json");
        Files.writeString(library, Files.readString(library) + "\n");
        String told = Run.of("chart", chart, "--json").err();
        assertTrue(told.contains("1 document changed; every verdict is as it was"), told);
        assertTrue(told.contains("Not the document that it was: small.devices.json"), told);
    }

    @Test
    void refusesASignOffWithTooFewVerdicts() throws IOException {
        sign('t');
        Files.writeString(chart, Files.readString(chart).replace("\"in\": \"f\"", "\"in\": \"ff\""));
        assertTrue(Run.of("check", chart).out().contains("one letter of f, c, t, u, b for each of the 1 columns"));
    }
}
