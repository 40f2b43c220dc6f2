/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.result;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a person reads of an answer. */
class CalculationTextTest {
    private static final Basis BASIS = new Basis("by hand", "always", "a book", "Mind the instructions.");

    @Test
    void valueComesFirstThenItsBoundsItsDetailsAndWhatItRestsOn() {
        Calculation answer = Calculation.of("Length", new BigDecimal("1.5"), "mm", BASIS)
                .within(new BigDecimal("1.4"), new BigDecimal("1.6"))
                .with(Detail.of("share", new BigDecimal("0.0001")), Detail.of("passes", true),
                        Detail.of("exact", false),
                        Detail.of("rule", "house"));
        assertEquals(List.of("Length: 1.5 mm", "  between 1.4 mm and 1.6 mm", "  share: 0.0001", "  passes: yes",
                "  exact: no", "  rule: house", "", "Method: by hand", "Validity: always", "Source: a book",
                "Mind the instructions."), CalculationText.write(answer));
    }

    @Test
    void listsStandInALineAndGroupsBelowEachOther() {
        Calculation answer = Calculation.of("Places", BigDecimal.ONE, "1", BASIS).with(
                Detail.numbers("angles", List.of(BigDecimal.ONE, BigDecimal.TEN)),
                Detail.texts("names", List.of("a", "b")),
                Detail.groups("positions", List.of(
                        List.of(Detail.of("x", BigDecimal.ZERO), Detail.of("y", BigDecimal.ONE)),
                        List.of(Detail.of("x", BigDecimal.TEN)))));
        assertEquals(
                List.of("Places: 1", "  angles: 1, 10", "  names: a, b", "  positions, in mm:", "    x 0, y 1",
                        "    x 10"),
                CalculationText.write(answer).subList(0, 6));
    }

    /** Names are those of the JSON; people read words and units. */
    @ParameterizedTest
    @CsvSource({ "belowRatedBurst, below rated burst: 2", "inVivoLowMm, in vivo low: 2 mm", "atForceN, at force: 2 N",
        "thinWallMPa, thin wall: 2 MPa", "clearanceMlPerMin, clearance: 2 mL/min",
        "rssHighMm, root sum square high: 2 mm", "stiffnessNmm2, stiffness: 2 N mm\u00b2",
        "totalDeg, total: 2 degrees", "n, n: 2" })
    void aNameIsReadAsWordsAndItsUnit(String name, String line) {
        Calculation answer = Calculation.of("It", BigDecimal.ONE, "1", BASIS)
                .with(Detail.of(name, BigDecimal.valueOf(2)));
        assertEquals("  " + line, CalculationText.write(answer).get(1));
    }

    @Test
    void whereThereIsNoValueItSaysWhy() {
        Calculation answer = Calculation.refused("Length", new Refusal("too short", "It is too short."), "mm", BASIS);
        assertEquals(List.of("Length: no answer. It is too short.", ""),
                CalculationText.write(answer).subList(0, 2));
    }

    /** Units of UCUM are written as the trade writes them, where it does. */
    @ParameterizedTest
    @CsvSource({ "[in_i], in", "[Ch], Fr", "atm, atm", "kPa, kPa", "[psi], psi", "N.mm2, N mm2", "mL/min, mL/min" })
    void unitIsWrittenAsUsual(String ucum, String written) {
        Calculation answer = Calculation.of("It", BigDecimal.ONE, ucum, BASIS);
        assertEquals("It: 1 " + written, CalculationText.write(answer).get(0));
    }
}
