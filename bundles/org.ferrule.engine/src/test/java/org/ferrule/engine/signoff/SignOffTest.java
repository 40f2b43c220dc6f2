/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.signoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

import org.ferrule.chart.look.VerdictLook;
import org.ferrule.engine.catalogue.LibraryReader;
import org.ferrule.engine.chart.OpenChart;
import org.ferrule.engine.chart.SolvedChart;
import org.ferrule.engine.document.DocumentHashes;
import org.ferrule.engine.extension.Extensions;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.matrix.FitCell;
import org.ferrule.fit.matrix.Progress;
import org.ferrule.io.json.JsonDocuments;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.DocumentHash;
import org.ferrule.model.FitChart;
import org.ferrule.model.RuleSet;
import org.ferrule.model.SignOff;
import org.ferrule.model.check.Validation;
import org.ferrule.quantity.Dimension;
import org.ferrule.samples.GuidesAndBalloons;
import org.junit.jupiter.api.Test;

/** What a sign-off writes down, and what is told when something changes afterwards. */
class SignOffTest {
    private static final String LIBRARY = "large.devices.json";
    private static final LocalDate DAY = LocalDate.of(2026, 5, 11);
    private static final Progress QUIET = Progress.SILENT;

    private final DeviceLibrary library = GuidesAndBalloons.library(3, 4);
    private final RuleSet rules = GuidesAndBalloons.rules();
    private final FitChart chart = chart();

    private static FitChart chart() {
        String json = """
                {"format": "ferrule.chart", "version": 1, "title": "Signed", "libraries": ["large.devices.json"],
                 "rules": "r.rules.json", "outer": {"devices": ["g0", "g1"]}, "inner": {"devices": ["b0", "b1", "b2"]},
                 "conditions": {"direction": "tip first", "reach": "12 cm"}}""";
        return (FitChart) new JsonDocuments().read(json.getBytes(StandardCharsets.UTF_8), "x.chart.json").document()
                .orElseThrow();
    }

    private SolvedChart solved() {
        return new OpenChart(chart, List.of(new LibraryReader(LIBRARY, library)), rules)
                .solve(Extensions.ofClassPath(SignOffTest.class.getClassLoader()).checks(), QUIET);
    }

    private void sign() {
        byte[] bytes = new JsonDocuments().write(library);
        List<DocumentHash> hashes = List.of(
                DocumentHashes.of("r.rules.json", rules, new JsonDocuments().write(rules)),
                DocumentHashes.of(LIBRARY, library, bytes));
        chart.setSignOff(SigningOff.of(chart, solved(), rules, " AB ", DAY, hashes));
    }

    private SignOffState state() {
        Map<String, String> now = Map.of(
                "r.rules.json", DocumentHashes.sha256(new JsonDocuments().write(rules)),
                LIBRARY, DocumentHashes.sha256(new JsonDocuments().write(library)));
        return new SignOffComparison(SignedVerdicts.of(chart).orElseThrow(), solved(), now).compare();
    }

    @Test
    void writesDownWhoWhenAndEveryVerdict() {
        sign();
        SignOff signOff = chart.getSignOff();
        assertEquals("AB", signOff.getBy());
        assertEquals("2026-05-11", signOff.getDate());
        assertEquals(List.of("conditions.direction: tip first", "conditions.reach: 12 cm"), signOff.getAsked());
        assertEquals(List.of(LIBRARY + "!b0", LIBRARY + "!b1", LIBRARY + "!b2"), signOff.getInner());
        SolvedChart solved = solved();
        for (int row = 0; row < 2; row++) {
            String letters = signOff.getRows().get(row).getIn();
            assertEquals(3, letters.length());
            for (int column = 0; column < 3; column++) {
                assertEquals(VerdictLook.of(solved.matrix().cell(row, column).in()),
                        VerdictLetters.look(letters.charAt(column)).orElseThrow());
            }
        }
    }

    @Test
    void isUpToDateUntilSomethingChanges() {
        sign();
        assertTrue(state().upToDate());
        assertTrue(new SignOffWords().head(state()).startsWith("Signed off by AB on 2026-05-11"));
    }

    @Test
    void staysTheSameThroughTheFile() {
        sign();
        byte[] written = new JsonDocuments().write(chart);
        FitChart read = (FitChart) new JsonDocuments().read(written, "x.chart.json").document().orElseThrow();
        assertEquals(new String(written, StandardCharsets.UTF_8),
                new String(new JsonDocuments().write(read), StandardCharsets.UTF_8));
        assertEquals(List.of(), new Validation(DAY).check(read));
        assertEquals(SignedVerdicts.of(chart), SignedVerdicts.of(read));
    }

    @Test
    void tellsEveryVerdictThatAnEditChanges() {
        sign();
        SolvedChart before = solved();
        narrow();
        SignOffState state = state();
        assertFalse(state.verdictsStand());
        for (VerdictChange change : state.verdicts()) {
            assertTrue(change.outerKey().startsWith(LIBRARY + "!g0#"), change.outerKey());
            int column = chart.getInner().getDevices().indexOf(change.innerKey().substring(LIBRARY.length() + 1));
            FitCell cell = before.matrix().cell(0, column);
            assertEquals(VerdictLook.of(change.phase() == Phase.IN ? cell.in() : cell.out()), change.before());
            assertEquals(VerdictLook.BLOCKED, change.after());
        }
        assertEquals(List.of(LIBRARY), state.documents());
        assertTrue(new SignOffWords().head(state).startsWith("NOT UP TO DATE"));
    }

    /** The first guide gets a lumen through which nothing goes. */
    private void narrow() {
        library.getDevices().stream().filter(device -> device.getId().equals("g0")).findFirst().orElseThrow()
                .getLumens().get(0).getSections().get(0).setId(Dimension.parse("0.3 mm"));
    }

    @Test
    void aNoteInALibraryMakesItAnotherDocumentButChangesNoVerdict() {
        sign();
        library.getDevices().get(0).setNote("seen again");
        SignOffState state = state();
        assertTrue(state.verdictsStand());
        assertFalse(state.upToDate());
        assertTrue(new SignOffWords().head(state).contains("every verdict is as it was"));
    }

    @Test
    void tellsDevicesThatCameAndWent() {
        sign();
        chart.getInner().getDevices().remove("b1");
        chart.getInner().getDevices().add("b3");
        SignOffState state = state();
        assertEquals(1, state.added().size());
        assertEquals(List.of(LIBRARY + "!b1"), state.gone());
        assertEquals(0, state.verdictCount());
    }

    @Test
    void tellsAConditionThatIsAskedOtherwise() {
        sign();
        chart.getConditions().setReach(Dimension.parse("13 cm"));
        assertEquals(List.of("no more conditions.reach: 12 cm", "now conditions.reach: 13 cm"), state().asked());
    }

    @Test
    void aMissingDocumentCountsAsChanged() {
        sign();
        SignOffState state = new SignOffComparison(SignedVerdicts.of(chart).orElseThrow(), solved(), Map.of())
                .compare();
        assertEquals(2, state.documents().size());
    }

    @Test
    void isRefusedWithoutANameAndWithOpenProblems() {
        assertThrows(IllegalArgumentException.class,
                () -> SigningOff.of(chart, solved(), rules, "  ", DAY, List.of()));
        chart.getOuter().getDevices().add("no-such-device");
        assertThrows(IllegalArgumentException.class,
                () -> SigningOff.of(chart, solved(), rules, "AB", DAY, List.of()));
    }
}
