/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

import static org.ferrule.geometry.Discs.disc;
import static org.ferrule.geometry.Discs.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What bodies hold in themselves, and what that proves. */
class PieceTest {

    @Test
    void ovalHoldsDiscsOfItsHeight() {
        assertEquals(List.of(mm("1"), mm("1")), Piece.of(new Stadium(mm("2.9"), mm("1"))).within());
        assertEquals(List.of(mm("2")), Piece.of(new Stadium(mm("2"), mm("2"))).within());
        assertEquals(16, Piece.of(new Stadium(mm("99"), mm("1"))).within().size());
    }

    @Test
    void setHoldsThoseOfItsDiscsThatDoNotOverlap() {
        DiscSet touching = new DiscSet(List.of(disc("0", "0", "0.4"), disc("0.5", "0", "0.6")));
        assertEquals(List.of(mm("0.6"), mm("0.4")), Piece.of(touching).within());
        DiscSet overlapping = new DiscSet(List.of(disc("0", "0", "0.4"), disc("0.499999", "0", "0.6")));
        assertEquals(List.of(mm("0.6")), Piece.of(overlapping).within());
        DiscSet upright = new DiscSet(List.of(disc("0", "0.3", "0.4"), disc("0", "-0.2", "0.6")));
        assertEquals(2, Piece.of(upright).within().size());
    }

    @Test
    void bodyIsRoundIfOneDiscIsItsOutline() {
        assertTrue(Piece.of(new FreeDisc(mm("1"))).isRound());
        assertTrue(Piece.of(new DiscSet(List.of(disc("0", "0", "0.4"), disc("0.1", "0", "0.6")))).isRound());
        assertFalse(Piece.of(new DiscSet(List.of(disc("0", "0", "0.4"), disc("0.2", "0", "0.6")))).isRound());
        assertFalse(Piece.of(new Stadium(mm("1.1"), mm("1"))).isRound());
        assertTrue(Piece.of(new Stadium(mm("1.1"), mm("1"))).isBar());
        assertFalse(Piece.of(new Stadium(mm("1"), mm("1"))).isBar());
    }

    @Test
    void rigidBodiesComeFirstAndLargeOnesBeforeSmallOnes() {
        Piece oval = Piece.of(new Stadium(mm("1.1"), mm("1")));
        Piece large = Piece.of(new FreeDisc(mm("3")));
        Piece small = Piece.of(new FreeDisc(mm("2")));
        assertEquals(List.of(oval, large, small), Stream.of(small, oval, large).sorted(Piece.ORDER).toList());
    }

    @Test
    void piecesNeedWhatOneNeedsBesideTheLargestDisc() {
        Stadium oval = new Stadium(mm("2"), mm("1"));
        PiecesBound bound = new PiecesBound(
                Stream.<Body>of(oval, new FreeDisc(mm("1")), new FreeDisc(mm("0.1"))).map(Piece::of).toList());
        assertEquals(mm("2.25"), bound.lower(mm("2.3")));
        assertEquals(mm("2.25"), oval.with(mm("1")).lowerDiameter());
        assertTrue(bound.isLeast(mm("2.25")));
        assertFalse(bound.isLeast(mm("2.26")));
    }
}
