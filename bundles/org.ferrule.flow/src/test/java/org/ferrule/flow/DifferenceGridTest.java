/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The multipoles against a solution on a grid that shares nothing with them. */
class DifferenceGridTest {
    private static final int CELLS = 40;
    private static final int MORE_CELLS = 50;

    /** The grid itself is checked with the annulus. */
    @ParameterizedTest
    @CsvSource({ "0.2, 0", "0.3, 0.5", "0.5, 1", "0.7, 0.9" })
    void gridAgreesWithTheAnnulus(double k, double e) {
        double grid = DifferenceGrid.share(List.of(Sections.circle(e * (1 - k), 0, k)), MORE_CELLS);
        assertEquals(1, grid / Annulus.eccentric(k, e), 1e-3);
    }

    @Test
    void agreesForUpToEightDiscs() {
        Sections.check(12, random -> assertAgrees(Sections.random(random, LumenFlow.MOST_DEVICES), CELLS, 3e-3));
    }

    @Test
    @Tag("slow")
    void agreesForThousandsOfArrangements() {
        Sections.check(2000, random -> assertAgrees(Sections.random(random, LumenFlow.MOST_DEVICES), MORE_CELLS, 2e-3));
    }

    private static void assertAgrees(List<Circle> discs, int cells, double tolerance) {
        double share = LumenFlow.at(Sections.LUMEN, Sections.placed(discs));
        assertEquals(1, share / DifferenceGrid.share(discs, cells), tolerance, discs::toString);
    }
}
