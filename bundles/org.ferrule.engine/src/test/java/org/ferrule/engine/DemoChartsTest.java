/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.ferrule.engine.chart.AssembledChart;
import org.ferrule.engine.chart.OpenChart;
import org.ferrule.engine.chart.SolvedChart;
import org.ferrule.engine.extension.Extensions;
import org.ferrule.fit.check.FitCheck;
import org.ferrule.fit.matrix.Progress;
import org.ferrule.fit.passage.FitAnswer;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.verdict.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The charts that ship, against what is known of the trade. The devices are invented, their sizes are usual ones. */
class DemoChartsTest {
    private static final List<FitCheck> CHECKS = Extensions.ofClassPath(DemoChartsTest.class.getClassLoader())
            .checks();

    static List<String> charts() {
        return DemoDocuments.chartNames();
    }

    @ParameterizedTest
    @MethodSource("charts")
    void asksEveryPairAsItIsWritten(String name) {
        AssembledChart chart = DemoDocuments.chart(name).assemble(CHECKS);
        assertEquals(List.of(), chart.problems());
        assertFalse(chart.outer().isEmpty() || chart.inner().isEmpty());
    }

    @ParameterizedTest
    @MethodSource("charts")
    void warnsThatItIsForDemonstrationOnly(String name) {
        List<String> footnotes = DemoDocuments.chart(name).chart().getFootnotes();
        assertTrue(footnotes.get(footnotes.size() - 1).contains("Not for clinical use"), footnotes::toString);
    }

    /**
     * Two shafts of 2.6 Fr need 1.733 mm, two of 2.7 Fr 1.800 mm, and a guide of 0.070 in has 1.778 mm (computed). Of 42
     * pairs of balloons 32 did not go through a 7 Fr extension (Cardiovasc Interv Ther 2019,
     * 10.1007/s12928-019-00622-9).
     */
    @ParameterizedTest(name = "{1} beside the first balloon in {0}: {2}")
    @CsvSource({
        "brn-guide-6fr-left-100, dun-sc-200-15, tight", "brn-guide-6fr-left-100, dun-nc-250-12, blocked",
        "brn-guide-7fr-left-100, dun-nc-250-12, fits", "brn-guide-5fr-left-100, dun-sc-150-15, blocked",
        "pel-extension-7fr, dun-sc-250-15, blocked", "ave-extension-7fr-40, dun-sc-250-15, blocked",
        "brn-guide-8fr-left-100, san-nc-275-15, unknown" })
    void kissesAsIsKnown(String outer, String inner, String verdict) {
        assertEquals(verdict, verdict("kissing-balloons", outer, inner));
    }

    /** A guide of 0.070 in less a shaft of 2.6 Fr leaves 0.911 mm, less one of 3.2 Fr 0.711 mm (computed). */
    @ParameterizedTest(name = "trapping balloon of 0.80 mm beside {0} in {1}: {2}")
    @CsvSource({
        "2-6, brn-guide-6fr-left-100, tight", "2-6, brn-guide-7fr-left-100, fits",
        "3-2, brn-guide-6fr-left-100, blocked", "3-2, brn-guide-7fr-left-100, fits" })
    void trapsAsIsKnown(String microcatheter, String outer, String verdict) {
        assertEquals(verdict, verdict("trapping-beside-" + microcatheter + "-fr", outer, "dun-trap-250-13"));
    }

    /** A guide of 6 Fr usually takes an anchor beside rapid-exchange devices, 7 Fr is safer (common practice). */
    @ParameterizedTest(name = "{1} beside the anchor in {0}: {2}")
    @CsvSource({
        "kes-guide-6fr-left-100, dun-sc-150-15, tight", "kes-guide-7fr-left-100, dun-sc-150-15, fits",
        "brn-guide-6fr-left-100, san-otw-150-20, blocked", "brn-guide-7fr-left-100, san-otw-150-20, fits" })
    void passesAnAnchorAsIsKnown(String outer, String inner, String verdict) {
        assertEquals(verdict, verdict("beside-a-side-branch-anchor", outer, inner));
    }

    /**
     * The maker says no; a burr of 1.25 mm comes with a drive sheath of 4.3 Fr = 1.433 mm (common practice). In a lumen
     * of 1.422 mm with a bend of 80 mm radius a rigid cylinder of 1.00 mm passes up to 16.5 mm, one of 1.05 mm up to 15.5
     * mm: 2 sqrt((D - d)(2 R + d)) (computed); the stents are rigid over 14 and 20 mm.
     */
    @ParameterizedTest(name = "{1} through a 6 Fr extension in {0}: {2}")
    @CsvSource({
        "brn-guide-8fr-left-100, kol-litho-250-12, blocked", "brn-guide-7fr-left-100, quo-burr-125, blocked",
        "brn-guide-7fr-left-100, san-stent-250-12, fits", "brn-guide-7fr-left-100, san-stent-300-18, blocked",
        "brn-guide-6fr-left-100, pel-micro-135, fits" })
    void goesThroughAnExtensionAsIsKnown(String outer, String inner, String verdict) {
        assertEquals(verdict, verdict("through-a-guide-extension", outer, inner));
    }

    @Test
    void balloonGoesInNoBetterAfterAnInflation() {
        OpenChart open = DemoDocuments.chart("balloons-after-inflation.chart.json");
        SolvedChart used = open.solve(CHECKS, Progress.SILENT);
        open.chart().getConditions().setAfterInflation(false);
        SolvedChart fresh = open.solve(CHECKS, Progress.SILENT);
        for (int outer = 0; outer < used.chart().outer().size(); outer++) {
            for (int inner = 0; inner < used.chart().inner().size(); inner++) {
                FitAnswer before = fresh.matrix().answer(outer, inner);
                FitAnswer after = used.matrix().answer(outer, inner);
                assertTrue(after.in().clearance().orElseThrow().worst()
                        .compareTo(before.in().clearance().orElseThrow().worst()) <= 0);
            }
        }
        assertTrue(used.matrix().counts().get(Verdict.FITS) < fresh.matrix().counts().get(Verdict.FITS));
    }

    private static String verdict(String chart, String outer, String inner) {
        AssembledChart assembled = DemoDocuments.chart(chart + ".chart.json").assemble(CHECKS);
        List<String> lines = assembled.outer().stream().map(e -> e.device().device().id()).toList();
        List<String> columns = assembled.inner().stream().map(d -> d.device().id()).toList();
        FitQuestion question = assembled.question().question(lines.indexOf(outer), columns.indexOf(inner));
        return assembled.question().solver().answer(question).in().verdict().word();
    }
}
