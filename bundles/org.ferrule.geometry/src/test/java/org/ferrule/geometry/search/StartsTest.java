/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** From where a search sets out, and how it takes overlaps away. */
class StartsTest {
    private static final Shape BAR = new Shape(new double[] { -0.6, 0.6 }, new double[2], new double[] { 0.3, 0.3 },
            true);

    private static double[] fresh(Parts parts, Starts starts) {
        double[] variables = new double[parts.variables];
        starts.fresh(variables);
        return variables;
    }

    @Test
    void scatteredBodiesCoverSevenTenthsOfTheFirstCircleAndLieInIt() {
        Parts parts = new Parts(List.of(Shape.disc(1), Shape.disc(0.5), Shape.disc(0.5)));
        Starts starts = new Starts(parts);
        for (int i = 0; i < 50; i++) {
            double[] scattered = fresh(parts, starts);
            double radius = scattered[6];
            assertEquals(1.5, 0.7 * radius * radius, 1e-12);
            for (int body = 0; body < 3; body++) {
                double reach = parts.radius[body] + Math.hypot(scattered[2 * body], scattered[2 * body + 1]);
                assertTrue(reach <= radius + 1e-12, () -> reach + " in " + radius);
            }
            fresh(parts, starts);
        }
    }

    @Test
    void firstCircleHoldsTheLargestBody() {
        Parts parts = new Parts(List.of(BAR, Shape.disc(0.01)));
        assertEquals(0.9, fresh(parts, new Starts(parts))[5], 1e-12);
    }

    @Test
    void bodiesThatTurnAreTurnedByAnyAngle() {
        Parts parts = new Parts(List.of(BAR, Shape.disc(0.3)));
        Starts starts = new Starts(parts);
        double least = 9;
        double most = -9;
        for (int i = 0; i < 200; i++) {
            double angle = fresh(parts, starts)[2];
            least = Math.min(least, angle);
            most = Math.max(most, angle);
        }
        assertTrue(least >= 0 && least < 0.2 && most > 6 && most <= 2 * Math.PI, least + " to " + most);
        assertEquals(0, starts.rings(), "bodies that turn are in no ring");
    }

    @Test
    void changeMovesOneBodyOrPutsTwoInEachOthersPlace() {
        Parts parts = new Parts(List.of(Shape.disc(1), Shape.disc(0.8), Shape.disc(0.6), Shape.disc(0.4)));
        Starts starts = new Starts(parts);
        double[] before = { 1, 2, 3, 4, 5, 6, 7, 8, 9 };
        int moved = 0;
        int swapped = 0;
        for (int i = 0; i < 200; i++) {
            double[] after = before.clone();
            starts.change(after);
            assertEquals(9, after[8]);
            int changed = 0;
            int kept = 0;
            for (int body = 0; body < 4; body++) {
                double x = after[2 * body];
                changed += x == before[2 * body] ? 0 : 1;
                kept += x == 1 || x == 3 || x == 5 || x == 7 ? after[2 * body + 1] == x + 1 ? 1 : -9 : 0;
            }
            moved += changed == 1 && kept == 3 ? 1 : 0;
            swapped += changed == 2 && kept == 4 ? 1 : 0;
        }
        assertEquals(200, moved + swapped);
        assertTrue(moved > 50 && swapped > 50, moved + " moved, " + swapped + " swapped");
    }

    private static double[] sideBySide(double distance) {
        return new double[] { -distance / 2, 0.01, distance / 2, 0, 2.5 };
    }

    @Test
    void overlapsAreTakenAwayWhereTheCircleIsBetterThanTheBest() {
        Parts parts = new Parts(Collections.nCopies(2, Shape.disc(1)));
        Relaxation relaxation = new Relaxation(parts);
        double[] variables = sideBySide(1.7);
        assertEquals(2, relaxation.relax(variables, Relaxation.FIRM), 1e-3);
        assertTrue(relaxation.firm(variables, Relaxation.FIRM, 3));
        assertEquals(2, variables[4], 1e-8);
        assertTrue(Math.hypot(variables[0] - variables[2], variables[1] - variables[3]) >= 2 - 1e-9);
    }

    @Test
    void whatIsNoBetterThanTheBestIsGivenUp() {
        Parts parts = new Parts(Collections.nCopies(2, Shape.disc(1)));
        Relaxation relaxation = new Relaxation(parts);
        for (double best : new double[] { 1.5, 1.999, 2 }) {
            double[] variables = sideBySide(1.7);
            relaxation.relax(variables, Relaxation.FIRM);
            assertFalse(relaxation.firm(variables, Relaxation.FIRM, best), () -> "best of " + best);
        }
        assertTrue(Relaxation.isPromising(1.002, 1) && !Relaxation.isPromising(1.004, 1));
    }
}
