/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.flow;

import static org.ferrule.flow.Sections.LUMEN;
import static org.ferrule.flow.Sections.disc;
import static org.ferrule.flow.Sections.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Collections;
import java.util.List;
import org.ferrule.geometry.PlacedDisc;
import org.junit.jupiter.api.Test;

/** One arrangement in a lumen. */
class LumenFlowTest {

    @Test
    void emptyLumenLetsAllThrough() {
        assertEquals(1, LumenFlow.at(LUMEN, List.of()));
        assertEquals(1, LumenFlow.at(LUMEN, Collections.nCopies(8, disc(0.5, 0, "0"))));
    }

    @Test
    void plugLetsNothingThrough() {
        assertEquals(0, LumenFlow.at(LUMEN, List.of(disc(0, 0, "2"))));
        assertEquals(0, LumenFlow.at(LUMEN, List.of(disc(0, 0, "1.9999"))));
    }

    /** A share does not depend on the scale. */
    @Test
    void sizeDoesNotMatter() {
        double small = LumenFlow.at(LUMEN, List.of(disc(0.2, 0.1, "0.9"), disc(-0.6, 0, "0.4")));
        double large = LumenFlow.at(mm("20"), List.of(disc(2, 1, "9"), disc(-6, 0, "4")));
        assertEquals(small, large, 1e-12);
    }

    /** Touching to the nanometre, and overlapping by less than one. */
    @Test
    void acceptsDiscsThatTouch() {
        double touching = LumenFlow.at(LUMEN, List.of(disc(0.5, 0, "1"), disc(-0.5, 0, "1")));
        double rounded = LumenFlow.at(LUMEN, List.of(disc(0.4999995, 0, "1"), disc(-0.5000005, 0, "1.000001")));
        assertEquals(0.06525669, touching, 1e-8);
        assertEquals(touching, rounded, 1e-6);
    }

    /** Discs without thickness are no obstacle for others. */
    @Test
    void discWithoutThicknessMayLieAnywhere() {
        assertEquals(Annulus.concentric(0.5), LumenFlow.at(LUMEN, List.of(disc(0, 0, "1"), disc(5, 0, "0"))), 1e-12);
    }

    @Test
    void refusesWhatCannotBe() {
        assertRefused("a lumen of 0 mm", "0", List.of());
        assertRefused("a lumen of -1 mm", "-1", List.of());
        assertRefused("9 devices, at most 8", "2", Collections.nCopies(9, disc(0, 0, "0")));
        assertRefused("negative diameter: -0.2 mm", "2", List.of(disc(0, 0, "0.1"), disc(0, 0, "-0.2")));
        List<PlacedDisc> outside = List.of(disc(0, 0, "0.1"), disc(0.9, 0, "0.201"));
        assertRefused(outside + ": a disc reaches out of the lumen of 2 mm", "2", outside);
        List<PlacedDisc> overlapping = List.of(disc(0, 0, "0.5"), disc(0.499, 0, "0.5"));
        assertRefused(overlapping + ": discs overlap", "2", overlapping);
        List<PlacedDisc> nowhere = List.of(disc(Double.NaN, 0, "0.5"));
        assertRefused(nowhere + ": a disc reaches out of the lumen of 2 mm", "2", nowhere);
    }

    private static void assertRefused(String message, String lumen, List<PlacedDisc> discs) {
        assertEquals(message,
                assertThrows(IllegalArgumentException.class, () -> LumenFlow.at(mm(lumen), discs)).getMessage());
    }
}
