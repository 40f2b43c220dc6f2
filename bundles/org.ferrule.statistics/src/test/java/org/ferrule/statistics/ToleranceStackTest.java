/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.RoundingMode;
import java.util.Arrays;
import java.util.List;

import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;
import org.ferrule.statistics.ToleranceStack.Contributor;
import org.ferrule.statistics.ToleranceStack.Range;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Against {@code shared/tolerance-stacks.csv}, each row with its source. */
class ToleranceStackTest {

    @ParameterizedTest
    @CsvFileSource(files = "../../shared/tolerance-stacks.csv", numLinesToSkip = 1)
    void agreesWithTable(String id, String contributors, String nominal, String worstLow, String worstHigh,
            String rssLow, String rssHigh, String unit) {
        LengthUnit u = unit.equals("in") ? LengthUnit.INCH : LengthUnit.MILLIMETRE;
        ToleranceStack stack = new ToleranceStack(
                Arrays.stream(contributors.split("; ")).map(text -> contributor(text, u)).toList());
        assertEquals(Length.of(nominal, u), stack.nominal(), id);
        assertEquals(new Range(Length.of(worstLow, u), Length.of(worstHigh, u)), stack.worstCase(), id);
        assertEquals(Length.of(rssLow, u), rounded(stack.rootSumSquare().low(), u), id);
        assertEquals(Length.of(rssHigh, u), rounded(stack.rootSumSquare().high(), u), id);
    }

    private static Contributor contributor(String text, LengthUnit unit) {
        String[] words = text.split(" ");
        return new Contributor(Length.of(words[0].substring(1), unit), Length.of(words[1], unit),
                Length.of(words[2], unit), text.startsWith("+"));
    }

    private static Length rounded(Length length, LengthUnit unit) {
        return Length.of(length.in(unit, 5, RoundingMode.HALF_EVEN), unit);
    }

    /** The shouldered screw gives six thousandths exactly: 9 + 1 + 25 + 1 = 36 (Shigley, from memory). */
    @Test
    void rootOfASquareIsExact() {
        ToleranceStack stack = new ToleranceStack(List.of(about(1_000, 3), about(100, 1), about(100, 5), about(10, 1)));
        assertEquals(new Range(new Length(1_204), new Length(1_216)), stack.rootSumSquare());
    }

    @Test
    void roundsOutwardWhereTheEndsAreNotWhole() {
        ToleranceStack odd = new ToleranceStack(
                List.of(new Contributor(new Length(5), new Length(4), new Length(7), true), about(0, 0)));
        assertEquals(new Range(new Length(4), new Length(7)), odd.rootSumSquare());
        // Two tolerances of 1: the root of 8, over 2, is 1.414.
        assertEquals(new Range(new Length(8), new Length(12)),
                new ToleranceStack(List.of(about(5, 1), about(5, 1))).rootSumSquare());
        // Widths of 1 and 1: the root of 2, over 2, is 0.707 about 10.
        ToleranceStack halves = new ToleranceStack(
                List.of(new Contributor(new Length(5), new Length(4), new Length(5), true),
                        new Contributor(new Length(5), new Length(5), new Length(6), true)));
        assertEquals(new Range(new Length(9), new Length(11)), halves.rootSumSquare());
    }

    @Test
    void refusesReversedLimitsAndNoContributor() {
        Exception refused = assertThrows(IllegalArgumentException.class,
                () -> new Contributor(Length.ZERO, new Length(6_000_000), new Length(3_000_000), true));
        assertTrue(refused.getMessage().contains("2 mm > 1 mm"), refused::getMessage);
        assertThrows(IllegalArgumentException.class, () -> new Range(new Length(1), Length.ZERO));
        assertThrows(IllegalArgumentException.class, () -> new ToleranceStack(List.of()));
    }

    private static Contributor about(long nominal, long tolerance) {
        return new Contributor(new Length(nominal), new Length(nominal - tolerance), new Length(nominal + tolerance),
                true);
    }
}
