/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.opinion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;

/** What is drawn lies between its ends, and pieces are cut and turned where they are told. */
class DrawTest {
    private static final int MANY = 4000;

    private static Draw draw(Draw.Of of, double low, double high, Optional<Double> deviation) {
        return new Draw(of, "somewhere", low, (low + high) / 2, high, deviation);
    }

    private static double[] drawn(Draw draw) {
        SplittableRandom random = new SplittableRandom(3);
        return IntStream.range(0, MANY).mapToDouble(i -> draw.from(random)).toArray();
    }

    private static long within(double[] values, double low, double high) {
        return IntStream.range(0, values.length).filter(i -> values[i] >= low && values[i] <= high).count();
    }

    /** Half of even ones lie in the middle half; of normal ones 68 % within a deviation (standard normal table). */
    @Test
    void valuesAreEvenOrNormalBetweenTheEnds() {
        double[] even = drawn(draw(Draw.Of.SHAFT, 100, 200, Optional.empty()));
        assertEquals(MANY, within(even, 100, 200));
        assertEquals(0.5, within(even, 125, 175) / (double) MANY, 0.03);
        double[] normal = drawn(draw(Draw.Of.SHAFT, 100, 200, Optional.of(10.0)));
        assertEquals(MANY, within(normal, 100, 200));
        assertEquals(0.683, within(normal, 140, 160) / (double) MANY, 0.03);
        assertEquals(0.5, within(normal, 100, 150) / (double) MANY, 0.03);
    }

    @Test
    void withoutADeviationOrASpreadTheCentreIsDrawn() {
        assertEquals(MANY, within(drawn(draw(Draw.Of.SHAFT, 100, 200, Optional.of(0.0))), 150, 150));
        assertEquals(MANY, within(drawn(draw(Draw.Of.SHAFT, 150, 150, Optional.of(10.0))), 150, 150));
    }

    @Test
    void theWorstEndOfALumenIsTheLowerOne() {
        assertEquals(100, draw(Draw.Of.LUMEN, 100, 200, Optional.empty()).worst());
        assertEquals(200, draw(Draw.Of.SHAFT, 100, 200, Optional.empty()).worst());
        assertEquals(200, draw(Draw.Of.GROWTH, 100, 200, Optional.empty()).worst());
    }

    @Test
    void aPieceIsCutAtStationsAndKeepsItsDiameters() {
        ToDoubleFunction<double[]> thin = drawn -> 10;
        ToDoubleFunction<double[]> thick = drawn -> 20;
        Piece taper = new Piece(100, 200, thin, thick);
        assertFalse(taper.isStraight());
        assertEquals(15, taper.at(150, new double[0]), 1e-9);
        Piece part = taper.from(120).upTo(160);
        assertEquals(120, part.from());
        assertEquals(160, part.to());
        assertEquals(12, part.at(120, new double[0]), 1e-9);
        assertEquals(16, part.at(160, new double[0]), 1e-9);
        assertEquals(14, part.at(140, new double[0]), 1e-9);
        assertSame(taper, taper.from(50).upTo(300));
        Piece turned = taper.reversed(1000);
        assertEquals(800, turned.from());
        assertEquals(900, turned.to());
        assertEquals(20, turned.at(800, new double[0]), 1e-9);
        assertEquals(107, taper.movedBy(7).from());
        assertEquals(10, taper.movedBy(7).at(107, new double[0]), 1e-9);
        Piece straight = new Piece(100, 200, thin, thin);
        assertTrue(straight.isStraight() && straight.from(120).isStraight());
        assertEquals(120, straight.from(120).from());
    }

    @Test
    void theLesserGapIsThatOfBothEnds() {
        assertEquals(new Gap(1, 3), new Gap(1, 5).min(new Gap(2, 3)));
        assertEquals(Gap.exactly(2), Gap.NOTHING_MEETS.min(Gap.exactly(2)));
    }
}
