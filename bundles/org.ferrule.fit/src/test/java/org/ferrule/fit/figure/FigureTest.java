/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.RoundingMode;

import org.ferrule.quantity.Length;
import org.junit.jupiter.api.Test;

class FigureTest {

    @Test
    void refusesEndsOutOfOrder() {
        assertThrows(IllegalArgumentException.class, () -> figure(2, 1, 3));
        assertThrows(IllegalArgumentException.class, () -> figure(1, 3, 2));
    }

    @Test
    void interpolatesEndByEnd() {
        assertEquals(figure(15, 20, 30), figure(10, 20, 30).towards(figure(20, 20, 30), new Length(1), new Length(2),
                RoundingMode.FLOOR));
    }

    @Test
    void roundsAsToldAlsoOnTheWayDown() {
        Figure thick = figure(10, 10, 10);
        Figure thin = figure(9, 9, 9);
        assertEquals(thin, thick.towards(thin, new Length(1), new Length(3), RoundingMode.FLOOR));
        assertEquals(thick, thick.towards(thin, new Length(2), new Length(3), RoundingMode.CEILING));
    }

    @Test
    void isExactOverLongWays() {
        Length kilometre = new Length(3_000_000_000_000L);
        assertEquals(figure(5_000_000_000_000L, 5_000_000_000_000L, 5_000_000_000_000L),
                Figure.exactly(Length.ZERO).towards(Figure.exactly(new Length(10_000_000_000_000L)),
                        kilometre.dividedBy(2), kilometre, RoundingMode.FLOOR));
    }

    /** A centre that came from one that nobody states is not stated either. */
    @Test
    void whatIsMadeOfAnAssumedCentreIsAssumed() {
        Figure stated = figure(10, 20, 30);
        Figure assumed = new Figure(new Length(12), new Length(18), new Length(31), true);
        assertEquals(new Figure(new Length(10), new Length(18), new Length(30), true), stated.min(assumed));
        assertEquals(new Figure(new Length(12), new Length(20), new Length(31), true), assumed.max(stated));
        assertEquals(stated.min(assumed), assumed.min(stated));
        assertEquals(stated.max(assumed), assumed.max(stated));
        assertEquals(figure(10, 15, 25), stated.min(figure(11, 15, 25)));
        assertEquals(figure(11, 20, 30), stated.max(figure(11, 15, 25)));
    }

    private static Figure figure(long low, long centre, long high) {
        return new Figure(new Length(low), new Length(centre), new Length(high), false);
    }
}
