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

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;

class EngineeringCommandsTest {
    @TempDir
    private Path folder;
    private SmallLaboratory small;

    @BeforeEach
    void writeDocuments() throws IOException {
        small = SmallLaboratory.in(folder);
    }

    private static JsonNode json(Run run) throws IOException {
        return new ObjectMapper().readTree(run.out());
    }

    /** Lumen low 1.768 less 0.025 required less the span of 0.01 mm. */
    @Test
    void requireTellsTheLargestShaftForAllGuides() throws IOException {
        Run run = Run.of("require", "--library", small.library(), "--device", "rod", "--kind", "guide catheter",
                "--json");
        assertEquals(0, run.exitCode(), run::err);
        JsonNode answer = json(run);
        assertEquals("1.733", answer.get("limit").get("distalMm").asText());
        assertEquals(5_199_000, answer.get("limit").get("distalThirdNanometres").asLong());
        assertEquals(4, answer.get("partners").size(), "two guides, both ways");
        assertEquals("fits", answer.get("partners").get(0).get("flips").get(0).get("below").asText());
    }

    @Test
    void requireSaysItInWordsRoundedDown() {
        Run run = Run.of("require", "--library", small.library(), "--device", "rod", "--section", "shaft", "--partner",
                "narrow");
        assertTrue(run.out().startsWith("going in: the largest that keeps every partner at \"fits\": 1.7330 mm"),
                run::out);
        assertTrue(run.out().contains("(0.06822 in)"), run::out);
        assertTrue(run.out().contains("narrow: fits up to 1.7330 mm (0.06822 in), then tight up to 1.7780 mm"),
                run::out);
    }

    @Test
    void requireTellsTheSmallestLumenRoundedUp() throws IOException {
        JsonNode answer = json(Run.of("require", "--library", small.library(), "--device", "wide#guide", "--partner",
                "rod", "--partner", "micro", "--keep", "tight", "--json"));
        assertEquals("lumen", answer.get("of").asText());
        assertEquals("1.74", answer.get("limit").get("distalMm").asText());
    }

    @Test
    void requireTellsTheSizeForAChanceOrWhyNot() throws IOException {
        JsonNode chances = json(Run.of("require", "--library", small.library(), "--device", "rod", "--partner",
                "narrow", "--partner", "wide", "--chance", "0.001", "--json")).get("chances");
        assertEquals(1.778 - 3.0902 * 0.005, chances.get(0).get("limit").get("distalMm").asDouble(), 1e-6);
        assertTrue(chances.get(1).get("refused").asText().contains("no standard deviation"));
    }

    @Test
    void requireEndsWithOneWhereNoSizeDoes() {
        assertEquals(1, Run.of("require", "--library", small.library(), "--device", "rod", "--partner", "narrow",
                "--reach", "90 cm").exitCode());
    }

    @Test
    void requireNamesTheSectionsThatThereAre() {
        Run run = Run.of("require", "--library", small.library(), "--device", "rod", "--section", "tip", "--partner",
                "narrow");
        assertEquals(2, run.exitCode());
        assertTrue(run.err().contains("1 \"shaft\""), run::err);
    }

    @Test
    void requireRefusesWhatItDoesNotKnow() {
        assertEquals(2, Run.of("require", "--library", small.library(), "--device", "rod").exitCode());
        assertEquals(2, Run.of("require", "--library", small.library(), "--device", "rod", "--kind", "spoon")
                .exitCode());
        assertEquals(2, Run.of("require", "--library", small.library(), "--device", "rod", "--partner", "narrow",
                "--keep", "blocked").exitCode());
    }

    /** Worst 1.768 - 1.75 = 0.018 mm; 0.007 mm are missing, half of them for each side. */
    @Test
    void budgetSharesWhatIsMissing() throws IOException {
        Run run = Run.of("budget", "--library", small.library(), "--outer", "narrow", "--inner", "rod", "--json");
        assertEquals(1, run.exitCode(), run::err);
        JsonNode budget = json(run).get("budget");
        assertEquals("0.007", budget.get("missingMm").asText());
        assertEquals("0.0035", budget.get("contributors").get(0).get("shareMm").asText());
        assertEquals("fits", budget.get("afterSharing").asText());
    }

    @Test
    void budgetSaysWhenNoToleranceDecides() {
        Run run = Run.of("budget", "--library", small.library(), "--outer", "wide", "--inner", "rod");
        assertEquals(0, run.exitCode(), run::err);
        assertTrue(run.out().contains("no tolerance decides"), run::out);
    }

    @Test
    void sensitivityRanksTheDimensions() throws IOException {
        JsonNode ranked = json(Run.of("sensitivity", small.chart(), "--json"));
        assertEquals("narrow", ranked.get(0).get("device").asText());
        assertEquals(2, ranked.get(0).get("changes").asInt());
        Run text = Run.of("sensitivity", small.chart(), "--top", "1");
        assertEquals(2, text.out().lines().count());
        assertEquals(0, text.exitCode());
    }

    @Test
    void requiredDiametersAndSensitivityAreDrawn() throws IOException {
        Path required = folder.resolve("required.svg");
        Run run = Run.of("require", "--library", small.library(), "--device", "rod", "--partner", "narrow", "--out",
                required);
        assertTrue(run.err().contains("wrote " + required), run::err);
        assertTrue(Files.readString(required).contains("lane:0"));
        assertTrue(Files.exists(folder.resolve("required-2.svg")), "coming out");
        Path bars = folder.resolve("bars.svg");
        assertEquals(0, Run.of("sensitivity", small.chart(), "--out", bars).exitCode());
        assertTrue(Files.readString(bars).contains("bar:0"));
    }

    @Test
    void secondOpinionAgreesAndNamesItsSeed() throws IOException {
        Run run = Run.of("second-opinion", "--library", small.library(), "--outer", "narrow", "--inner", "rod",
                "--seed", "5", "--samples", "200");
        assertEquals(0, run.exitCode(), run::err);
        assertTrue(run.out().contains("0 of 200 parts overlap"), run::out);
        assertTrue(run.out().contains("seed 5"), run::out);
        JsonNode all = json(Run.of("second-opinion", small.chart(), "--samples", "20", "--json"));
        assertEquals(8, all.size());
        all.forEach(one -> assertTrue(one.get("agrees").asBoolean(), one::toString));
    }

    @Test
    void secondOpinionWantsAChartOrAPair() {
        assertEquals(2, Run.of("second-opinion").exitCode());
        assertEquals(2, Run.of("second-opinion", small.chart(), "--library", small.library()).exitCode());
        assertEquals(2, Run.of("second-opinion", small.chart(), "--samples", "0").exitCode());
    }

    /** 1.768 - 1.75 is tight, without the bias 1.768 - 1.71 fits. */
    @Test
    void biasNamesTheCellsThatChange() throws IOException {
        JsonNode comparison = json(Run.of("bias", small.chart(), "--json"));
        assertEquals(2, comparison.get("changed").size(), "in and out");
        assertEquals("micro", comparison.get("changed").get(0).get("inner").asText());
        assertEquals("tight", comparison.get("changed").get(0).get("with").asText());
        assertEquals("fits", comparison.get("changed").get(0).get("without").asText());
        Run text = Run.of("bias", small.chart());
        assertEquals(0, text.exitCode());
        assertTrue(text.out().contains("micro in narrow, in: tight, without the bias fits"), text::out);
    }

    @Test
    void validateWritesReportsAndEndsWithOneWhereAValueIsNotMet() throws IOException {
        Path markdown = folder.resolve("report.md");
        Run run = Run.of("validate", "--rules", small.rules(), "--out", markdown);
        assertEquals(1, run.exitCode(), "the small rules say nothing of wires and profiles");
        assertTrue(run.out().contains("NOT MET: which-size-takes-which"), run::out);
        String text = Files.readString(markdown);
        assertTrue(text.contains("Small rules, rev. 2, SHA-256 "), text);
        assertTrue(text.contains("## passages"), text);
        Path csv = folder.resolve("report.csv");
        assertEquals(0, Run.of("validate", "--out", csv).exitCode());
        assertTrue(Files.readString(csv).startsWith("table,id,subject,published,computed"));
    }

    @Test
    void validateRefusesAnUnknownFormat() {
        assertEquals(2, Run.of("validate", "--out", folder.resolve("report.doc")).exitCode());
    }
}
