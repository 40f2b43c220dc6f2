/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.ferrule.chart.Shelf;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.FitAnswer;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.quantity.LengthUnit;
import org.junit.jupiter.api.Test;

class AnswerWordsTest {
    private static final AnswerWords WORDS = new AnswerWords(
            ReasonWords.english(UnitPreferences.in(LengthUnit.MILLIMETRE)));

    private static FitAnswer answer(Device outer, Device inner) {
        return Shelf.answer(Shelf.question(outer, inner));
    }

    private static List<AnswerLine> explained(Device outer, Device inner) {
        FitQuestion question = Shelf.question(outer, inner);
        return WORDS.explain(Shelf.answer(question), PairNames.of(outer, inner), question.direction());
    }

    private static List<String> texts(List<AnswerLine> lines, Phase phase, AnswerLine.Kind kind) {
        return lines.stream().filter(l -> l.phase() == phase && l.kind() == kind).map(AnswerLine::text).toList();
    }

    @Test
    void summaryTellsVerdictAuthorityClearancesAndPlace() {
        // 1.778 mm - 2 x 0.02 around 1.75 mm ± 0.03: worst -0.022, nominal 0.028, best 0.078
        assertEquals("Tight by geometry: clearance -0.03 mm / -0.9 thou worst, 0.02 mm / 1.1 thou nominal, "
                + "0.07 mm / 3.0 thou best, at the burr in the working lumen",
                WORDS.summary(answer(Shelf.guide("6 Fr", "0.070 in"), Shelf.burr()).in()));
    }

    @Test
    void summaryOfAnUnknownDoesNotInventAClearance() {
        Device outer = Shelf.guide("6 Fr", "");
        assertEquals("Unknown by geometry: no clearance can be given",
                WORDS.summary(answer(outer, Shelf.burr()).in()));
    }

    @Test
    void blockedIsExplainedByWhereItStops() {
        List<AnswerLine> lines = explained(Shelf.extension(), Shelf.burr());
        assertTrue(texts(lines, Phase.IN, AnswerLine.Kind.DECIDES).stream().anyMatch(t -> t.startsWith("Stops ")),
                lines.toString());
        assertTrue(texts(lines, Phase.IN, AnswerLine.Kind.DECIDES)
                .contains("Did not pass on the bench, 3 samples (Made-up bench report, rev. 1, p. 7)"),
                lines.toString());
    }

    @Test
    void cautionsAndAssumptionsStandUnderTheirOwnKind() {
        List<AnswerLine> lines = explained(Shelf.extension(), Shelf.balloon("2.5", "0.82 mm"));
        assertEquals(1, texts(lines, Phase.IN, AnswerLine.Kind.CAUTION).size());
        assertFalse(texts(lines, Phase.IN, AnswerLine.Kind.NOTE).isEmpty());
        assertFalse(texts(lines, Phase.IN, AnswerLine.Kind.SOURCE).isEmpty());
    }

    @Test
    void aClaimStandsBesideWhatGeometrySays() {
        List<AnswerLine> lines = explained(Shelf.guide("6 Fr", "0.070 in"), Shelf.claimedStent("0.066 in"));
        assertTrue(texts(lines, Phase.IN, AnswerLine.Kind.NOTE).contains("Geometry alone says: fits"),
                lines.toString());
        assertEquals("Lutra stent 3.0 x 18 claims to go through a lumen of 0.066 in; this lumen is labelled 1.78 mm "
                + "(Made-up instructions for use, rev. C, p. 3)",
                texts(lines, Phase.IN, AnswerLine.Kind.DECIDES).get(0));
    }

    @Test
    void sameAnswerOnTheWayOutIsNotToldTwice() {
        List<AnswerLine> lines = explained(Shelf.guide("7 Fr", "0.081 in"), Shelf.burr());
        assertEquals(List.of("Coming out, the answer is the same"),
                lines.stream().filter(l -> l.phase() == Phase.OUT).map(AnswerLine::text).toList());
    }

    @Test
    void overAWireTheReachIsWireLeft() {
        FitQuestion question = Shelf.overWire(Shelf.microcatheter(), Shelf.wire());
        List<AnswerLine> lines = WORDS.explain(Shelf.answer(question),
                PairNames.of(question.outer().device(), question.inner().device()), Direction.OVER_WIRE_TAIL);
        assertTrue(texts(lines, Phase.IN, AnswerLine.Kind.NOTE).contains("3.0 cm of wire is left beyond the outer tip"),
                lines.toString());
    }
}
