/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;

import org.ferrule.chart.Shelf;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.FitAnswer;
import org.ferrule.fit.passage.FitQuestion;
import org.junit.jupiter.api.Test;

class PlacementTest {

    private static Placement in(FitQuestion question) {
        return Placement.of(question, Shelf.answer(question).in(), Phase.IN);
    }

    @Test
    void aDeviceThatStopsLiesWhereItsReachSays() {
        FitQuestion question = Shelf.question(Shelf.guide("5 Fr", "1.20 mm"), Shelf.balloon("4", "1.12 mm"));
        FitAnswer answer = Shelf.answer(question);
        assertEquals(1000 + answer.in().reach().orElseThrow().mm(), in(question).tip(), 1e-6);
    }

    @Test
    void aDeviceThatPassesIsShownAsFarInAsTheStretchesThatDecideMeet() {
        // the distal shaft with the wire beside it, 250 to 280 mm from the tip, leaves the guide at 1000 mm
        Placement placement = in(Shelf.question(Shelf.guide("6 Fr", "0.070 in"), Shelf.balloon("2.5", "0.82 mm")));
        assertEquals(1280, placement.tip(), 1e-6);
        assertEquals(1000, placement.limit().orElseThrow(), 1e-6);
    }

    @Test
    void aDeviceCaughtOnTheWayOutLiesAtTheEdgeThatCatchesIt() {
        FitQuestion question = Shelf.question(Shelf.extension(), Shelf.burr());
        Placement placement = Placement.of(question, Shelf.answer(question).out(), Phase.OUT);
        assertEquals(256, placement.tip(), 1e-6);
        assertEquals(Optional.of(250.0), placement.limit());
    }

    @Test
    void withoutAPlaceThatDecidesADeviceLiesAllTheWayIn() {
        Device micro = Shelf.microcatheter();
        assertEquals(new Placement(1350, Optional.empty()), in(Shelf.question(Shelf.guide("8 Fr", ""), micro)));
    }

    @Test
    void overAWireTheWireAheadStaysBeyondTheTip() {
        FitQuestion question = Shelf.overWire(Shelf.microcatheter(), Shelf.wire());
        Placement placement = in(question);
        assertTrue(placement.tip() >= 1350 + 30 - 1e-6, placement.toString());
    }
}
