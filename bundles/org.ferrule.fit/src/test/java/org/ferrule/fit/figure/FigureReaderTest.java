/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.figure;

import static org.ferrule.fit.device.DeviceKind.BALLOON_CATHETER;
import static org.ferrule.fit.device.DeviceKind.GUIDE_CATHETER;
import static org.ferrule.fit.device.DeviceKind.MICROCATHETER;
import static org.ferrule.fit.rules.FigureClass.CROSSING_PROFILE;
import static org.ferrule.fit.rules.FigureClass.INNER_DIAMETER;
import static org.ferrule.fit.rules.FigureClass.OUTER_DIAMETER;
import static org.ferrule.fit.sample.Texts.length;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.ferrule.fit.rules.RuleSetException;
import org.ferrule.fit.sample.TestRules;
import org.ferrule.quantity.Dimension;
import org.ferrule.statistics.ToleranceFactor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Printed dimensions as intervals, under spans of 0.02 mm below and 0.05 mm above. */
class FigureReaderTest {
    private static final TestRules RULES = TestRules.exact().spans("0.02 mm", "0.05 mm").sampling("0.95", "0.95");

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "1.00 mm,             0.98, 1.00, 1.05, false",
        "1.00 mm nom,         0.98, 1.00, 1.05, false",
        "1.00 mm measured,    0.98, 1.00, 1.05, false",
        "1.00 mm max,         0.93, 0.95, 1.00, true",
        "1.00 mm min,         1.00, 1.02, 1.07, true",
        "1.00 mm ±0.01,       0.99, 1.00, 1.01, false",
        "1.00 mm +0.03/-0.01, 0.99, 1.00, 1.03, false",
        "0.90..0.94 mm,       0.90, 0.92, 0.94, true",
        // what would lie below zero ends there
        "0.01 mm,             0.00, 0.01, 0.06, false",
        "0.04 mm max,         0.00, 0.00, 0.04, true" })
    void readsEndsAndCentre(String printed, String low, String centre, String high, boolean assumed) {
        Figure expected = new Figure(length(low + " mm"), length(centre + " mm"), length(high + " mm"), assumed);
        assertEquals(expected, read(printed).figure());
    }

    @Test
    void figureThatStatesAllNeedsNoSpan() {
        FigureReader reader = new FigureReader(TestRules.silent().rules());
        ReadFigure read = reader.read(Dimension.parse("1 mm ±0.01"), OUTER_DIAMETER, MICROCATHETER);
        assertTrue(read.assumedFrom().isEmpty());
    }

    @Test
    void figureWithoutAnEndNeedsASpan() {
        FigureReader reader = new FigureReader(TestRules.silent().rules());
        Exception refused = assertThrows(RuleSetException.class,
                () -> reader.read(Dimension.parse("1 mm"), OUTER_DIAMETER, MICROCATHETER));
        assertTrue(refused.getMessage().contains("outer diameter of a microcatheter"), refused.getMessage());
    }

    @Test
    void spanOfTheKindWinsOverTheGeneralOne() {
        TestRules rules = TestRules.exact().span(CROSSING_PROFILE, "0.1 mm", "0.2 mm", BALLOON_CATHETER)
                .span(CROSSING_PROFILE, "0 mm", "0 mm");
        assertEquals(length("1.2 mm"), new FigureReader(rules.rules())
                .read(Dimension.parse("1 mm"), CROSSING_PROFILE, BALLOON_CATHETER).figure().high());
    }

    @Test
    void laterSpanWinsAmongEquals() {
        TestRules rules = TestRules.exact().span(INNER_DIAMETER, "0.1 mm", "0.1 mm").span(INNER_DIAMETER, "0.2 mm",
                "0.2 mm");
        assertEquals(length("0.8 mm"), new FigureReader(rules.rules())
                .read(Dimension.parse("1 mm"), INNER_DIAMETER, GUIDE_CATHETER).figure().low());
    }

    @Test
    void sampleSpreadsByItsToleranceFactor() {
        // ISO 16269-6, confidence 95 %, coverage 95 %, n 10: k = 2.9110
        Figure figure = read("1.015 mm sd 0.008 n 12").figure();
        double k12 = ToleranceFactor.oneSided(12, 0.95, 0.95);
        assertEquals(1.015 - k12 * 0.008, figure.low().mm(), 1e-6);
        assertEquals(1.015 + k12 * 0.008, figure.high().mm(), 1e-6);
        assertEquals(length("1.015 mm"), figure.centre());
        assertFalse(figure.centreAssumed());
        double exact = k12 * length("0.008 mm").thirdNanometres();
        assertTrue(figure.high().minus(figure.centre()).thirdNanometres() >= exact, "rounded outwards");
        assertEquals(1.015 + 2.9110 * 0.008, read("1.015 mm sd 0.008 n 10").figure().high().mm(), 1e-6);
    }

    @Test
    void sampleOfUnknownSizeTakesTheSpan() {
        assertEquals(length("1.065 mm"), read("1.015 mm sd 0.008").figure().high());
        assertTrue(read("1.015 mm sd 0.008").assumedFrom().isPresent());
    }

    @Test
    void sampleNeedsConfidenceAndCoverage() {
        FigureReader reader = new FigureReader(TestRules.exact().rules());
        assertThrows(RuleSetException.class,
                () -> reader.read(Dimension.parse("1 mm sd 0.01 n 10"), OUTER_DIAMETER, MICROCATHETER));
    }

    @Test
    void unreadableTextIsRefusedByName() {
        Exception refused = assertThrows(IllegalArgumentException.class, () -> new FigureReader(RULES.rules())
                .read(Dimension.lenient("21 G"), OUTER_DIAMETER, MICROCATHETER));
        assertTrue(refused.getMessage().contains("21 G"));
    }

    private static ReadFigure read(String printed) {
        return new FigureReader(RULES.rules()).read(Dimension.parse(printed), OUTER_DIAMETER, MICROCATHETER);
    }
}
