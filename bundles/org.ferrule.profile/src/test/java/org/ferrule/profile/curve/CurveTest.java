/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.curve;

import static org.ferrule.profile.Compared.length;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.ferrule.fit.device.SourceRef;
import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.passage.Taper;
import org.junit.jupiter.api.Test;

/** Diameters at stations where pieces meet, overlap, taper or are missing. */
class CurveTest {
    private static final Piece THIN = piece("thin", 0, 10, "0.8 mm", "0.8 mm");
    private static final Piece THICK = piece("thick", 10, 20, "1.0 mm", "1.0 mm");
    private static final Piece TAPER = piece("taper", 20, 30, "1.0 mm", "0.6 mm");

    private static Piece piece(String name, int from, int to, String start, String end) {
        return new Piece(name, length(from + " mm"), length(to + " mm"), Optional.of(new Taper(
                Figure.exactly(length(start)), Figure.exactly(length(end)))), List.of(), SourceRef.NONE);
    }

    private static Piece unknown(String name, int from, int to) {
        return new Piece(name, length(from + " mm"), length(to + " mm"), Optional.empty(), List.of(), SourceRef.NONE);
    }

    private static Curve curve(Curve.Kind kind, Piece... pieces) {
        return new Curve(kind, "", List.of(pieces));
    }

    private static Reading.Known at(Curve curve, String station) {
        return assertInstanceOf(Reading.Known.class, curve.at(length(station)));
    }

    @Test
    void whereTwoPiecesMeetTheOneThatDecidesIsNamed() {
        for (Curve outer : List.of(curve(Curve.Kind.OUTER, THIN, THICK), curve(Curve.Kind.OUTER, THICK, THIN))) {
            assertEquals("thick", at(outer, "10 mm").section());
            assertEquals(length("1.0 mm"), at(outer, "10 mm").figure().centre());
        }
        for (Curve inner : List.of(curve(Curve.Kind.INNER, THIN, THICK), curve(Curve.Kind.INNER, THICK, THIN))) {
            assertEquals("thin", at(inner, "10 mm").section());
            assertEquals(length("0.8 mm"), at(inner, "10 mm").figure().centre());
        }
        Piece same = piece("same", 10, 20, "0.8 mm", "0.8 mm");
        assertEquals("thin", at(curve(Curve.Kind.OUTER, THIN, same), "10 mm").section(), "of equal ones the first");
        assertEquals("thin", at(curve(Curve.Kind.INNER, THIN, same), "10 mm").section());
    }

    @Test
    void aTaperRunsStraightFromEndToEnd() {
        Curve curve = curve(Curve.Kind.OUTER, TAPER);
        assertEquals(length("1.0 mm"), at(curve, "20 mm").figure().centre());
        assertEquals(length("0.9 mm"), at(curve, "22.5 mm").figure().centre());
        assertEquals(length("0.6 mm"), at(curve, "30 mm").figure().centre());
        assertInstanceOf(Reading.Beyond.class, curve.at(length("30.1 mm")));
        assertInstanceOf(Reading.Beyond.class, curve.at(length("19.9 mm")));
    }

    @Test
    void theLargestOutsideAndTheSmallestInsideAreTheExtremes() {
        assertEquals(Optional.of(length("1.0 mm")),
                curve(Curve.Kind.OUTER, THIN, THICK, TAPER).extreme().map(Figure::centre));
        assertEquals(Optional.of(length("0.6 mm")),
                curve(Curve.Kind.INNER, THIN, THICK, TAPER).extreme().map(Figure::centre));
        assertEquals(Optional.empty(), curve(Curve.Kind.OUTER, THIN, unknown("open", 10, 20)).extreme());
        assertEquals(Optional.empty(), curve(Curve.Kind.OUTER).extreme());
    }

    @Test
    void theLargestBeginsAtItsMostDistalStation() {
        assertEquals(Optional.of(length("10 mm")), curve(Curve.Kind.OUTER, THIN, THICK, TAPER).largestAt());
        Piece rising = piece("rising", 0, 10, "0.5 mm", "1.2 mm");
        assertEquals(Optional.of(length("10 mm")), curve(Curve.Kind.OUTER, rising, TAPER).largestAt());
        assertEquals(Optional.empty(), curve(Curve.Kind.INNER, THIN).largestAt());
    }

    @Test
    void insideAStretchTheLargerOfTwoPiecesCountsOutsideTheSmallerInside() {
        Piece over = piece("over", 0, 20, "0.9 mm", "0.9 mm");
        assertEquals(Optional.of(length("0.9 mm")), curve(Curve.Kind.OUTER, THIN, over)
                .inside(length("0 mm"), length("0 mm"), length("10 mm")).map(Figure::centre));
        assertEquals(Optional.of(length("0.8 mm")), curve(Curve.Kind.INNER, THIN, over)
                .inside(length("0 mm"), length("0 mm"), length("10 mm")).map(Figure::centre));
        Curve open = curve(Curve.Kind.OUTER, THIN, unknown("open", 0, 10));
        assertEquals(Optional.empty(), open.inside(length("0 mm"), length("0 mm"), length("10 mm")));
        assertEquals(Optional.empty(), open.spans().get(0).diameter());
    }

    @Test
    void figuresAreAssumedOnlyWhereACentreOrAnEndIs() {
        assertFalse(THIN.isAssumed());
        Figure open = new Figure(length("0.8 mm"), length("0.85 mm"), length("0.9 mm"), true);
        Piece assumed = new Piece("open", length("0 mm"), length("10 mm"), Optional.of(new Taper(open, open)),
                List.of(), SourceRef.NONE);
        assertTrue(assumed.isAssumed());
        assertTrue(at(curve(Curve.Kind.OUTER, THIN, assumed), "5 mm").assumed());
        assertFalse(at(curve(Curve.Kind.OUTER, THIN), "5 mm").assumed());
    }

    @Test
    void aPieceThatRunsBackIsRefusedAPointIsNone() {
        assertThrows(IllegalArgumentException.class, () -> piece("back", 10, 9, "1 mm", "1 mm"));
        assertEquals(length("1 mm"), at(curve(Curve.Kind.OUTER, piece("ring", 10, 10, "1 mm", "1 mm")), "10 mm")
                .figure().centre());
    }
}
