/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.change;

import static org.ferrule.fit.sample.Texts.length;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.QuantitySyntaxException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ReprintTest {

    @ParameterizedTest
    @ValueSource(strings = { "1.78 mm", "0.070 in min", "2.6F max", "1.02 mm ±0.03", "1.02 mm +0.02/-0.01",
        "0.88..0.94 mm", "1.015 mm sd 0.008 n 12", "1.015 mm sd 0.008", "1.78 mm nom", "1.02 mm measured",
        "0.070 in (1.78 mm)" })
    void keepsEverythingButTheFigureToAThirdOfANanometre(String text) {
        Dimension printed = Dimension.parse(text);
        Length by = new Length(-7);
        Dimension moved = Reprint.movedBy(printed, by);
        assertEquals(printed.label().plus(by), moved.label());
        assertEquals(printed.low().map(by::plus), moved.low());
        assertEquals(printed.centre().map(by::plus), moved.centre());
        assertEquals(printed.high().map(by::plus), moved.high());
        assertEquals(printed.sample().map(s -> s.standardDeviation()), moved.sample().map(s -> s.standardDeviation()));
        assertEquals(printed.sample().map(s -> s.n()), moved.sample().map(s -> s.n()));
    }

    @ParameterizedTest
    @ValueSource(strings = { "1.78 mm", "0.070 in min", "1.02 mm ±0.03", "0.88..0.94 mm", "1.015 mm sd 0.008 n 12" })
    void canBeMovedToZeroAndNoFurther(String text) {
        Dimension printed = Dimension.parse(text);
        Length least = Reprint.leastMove(printed);
        Dimension moved = Reprint.movedBy(printed, least);
        assertEquals(Length.ZERO, moved.low().orElse(moved.label()));
        assertThrows(QuantitySyntaxException.class, () -> Reprint.movedBy(printed, least.minus(new Length(1))));
    }

    @Test
    void exactDimensionHasNoSpread() {
        Dimension exact = Reprint.exactly(length("0.0707 in"));
        assertEquals(exact.low(), exact.high());
        assertEquals(length("0.0707 in"), exact.label());
    }
}
