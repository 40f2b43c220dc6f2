/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.words;

import static org.ferrule.chart.DeviceMaker.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.ferrule.chart.Shelf;
import org.ferrule.fit.FitSolver;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.stack.Access;
import org.ferrule.fit.stack.Level;
import org.ferrule.fit.stack.Placed;
import org.ferrule.fit.stack.Stack;
import org.ferrule.fit.stack.StackSolver;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.LengthUnit;
import org.junit.jupiter.api.Test;

class StackWordsTest {
    private static final StackWords WORDS = new StackWords(
            ReasonWords.english(UnitPreferences.in(LengthUnit.MILLIMETRE)));

    private static List<String> explained(String vessel) {
        Device guide = Shelf.guide("6 Fr", "0.070 in");
        Stack stack = new Stack(Optional.of(new Access("radial artery", Optional.of(Dimension.parse(vessel)))),
                List.of(level(guide, 0), level(Shelf.extension(), 50), level(Shelf.microcatheter(), 80)),
                Shelf.RULES);
        return WORDS.explain(StackSolver.answer(stack, FitSolver.standard(List.of())), Phase.IN);
    }

    private static Level level(Device device, double aheadMm) {
        return Level.of(new Placed(ReadDevice.of(device, Shelf.RULES), mm(aheadMm)));
    }

    @Test
    void saysWhichLevelIsWeakestAndWhatEachIsAskedAgainst() {
        List<String> lines = explained("2.6 mm");
        assertTrue(lines.get(0).startsWith("Weakest: "), lines.toString());
        String guide = Shelf.guide("6 Fr", "0.070 in").name();
        String extension = Shelf.extension().name();
        assertTrue(lines.stream().anyMatch(l -> l.startsWith(extension + " in " + guide + ": ")), lines.toString());
        assertTrue(lines.stream().anyMatch(l -> l.startsWith(Shelf.microcatheter().name() + " in " + guide
                + ", through " + extension + ": ")), lines.toString());
    }

    @Test
    void saysHowFarEachTipReaches() {
        List<String> lines = explained("2.6 mm");
        assertEquals(3, lines.stream().filter(l -> l.contains("from the outermost hub")).count(), lines.toString());
        assertFalse(lines.stream().anyMatch(l -> l.matches(".*[{}\\[\\]].*")), lines.toString());
    }
}
