/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import static org.ferrule.chart.DeviceMaker.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.ferrule.chart.Drawn;
import org.ferrule.chart.Drawn.Words;
import org.ferrule.chart.Shelf;
import org.ferrule.chart.look.Scheme;
import org.ferrule.chart.look.VerdictLook;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.chart.words.UnitPreferences;
import org.ferrule.fit.FitSolver;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.stack.Level;
import org.ferrule.fit.stack.Placed;
import org.ferrule.fit.stack.Stack;
import org.ferrule.fit.stack.StackAnswer;
import org.ferrule.fit.stack.StackSolver;
import org.ferrule.picture.Ink;
import org.ferrule.picture.Picture;
import org.ferrule.picture.Shape;
import org.ferrule.quantity.LengthUnit;
import org.junit.jupiter.api.Test;

class StackDrawingTest {
    private static final StackDrawing DRAWING = new StackDrawing(
            ReasonWords.english(UnitPreferences.in(LengthUnit.MILLIMETRE)));
    private static final double[][] SIZES = { { 60, 35 }, { 79.4, 39.7 }, { 110, 60 }, { 200, 120 } };

    private static StackAnswer answer(Level... more) {
        List<Level> levels = new ArrayList<>(List.of(level(Shelf.guide("6 Fr", "0.070 in"), 0),
                level(Shelf.extension(), 50)));
        levels.addAll(List.of(more));
        return StackSolver.answer(new Stack(Optional.empty(), levels, Shelf.RULES), FitSolver.standard(List.of()));
    }

    private static Level level(Device device, double aheadMm) {
        return Level.of(placed(device, aheadMm));
    }

    private static Placed placed(Device device, double aheadMm) {
        return new Placed(ReadDevice.of(device, Shelf.RULES), mm(aheadMm));
    }

    @Test
    void wordsKeepApartAndOnThePaper() {
        StackAnswer answer = answer(level(Shelf.microcatheter(), 80));
        for (double[] size : SIZES) {
            for (Phase phase : Phase.values()) {
                Picture picture = DRAWING.of(answer, phase, size[0], size[1]);
                Drawn drawn = Drawn.of(picture);
                assertEquals(List.of(), drawn.overlaps(), size[0] + " x " + size[1]);
                assertEquals(List.of(), drawn.outside(picture.paper()), size[0] + " x " + size[1]);
            }
        }
    }

    @Test
    void everyLevelIsAGroupWithItsName() {
        Picture picture = DRAWING.of(answer(level(Shelf.microcatheter(), 80)), Phase.IN, 200, 120);
        Drawn drawn = Drawn.of(picture);
        for (int level = 0; level < 3; level++) {
            assertTrue(drawn.hasGroup("level:" + level), "level " + level);
        }
        assertTrue(drawn.text("level:2").contains(Shelf.microcatheter().name()), drawn.text("level:2"));
        assertTrue(picture.description().contains(Shelf.microcatheter().name() + ": "), picture.description());
    }

    @Test
    void whatLiesSideBySideHasNamesOfItsOwn() {
        Level both = new Level(List.of(placed(Shelf.microcatheter(), 60)), placed(Shelf.microcatheter(), 80));
        Drawn drawn = Drawn.of(DRAWING.of(answer(both), Phase.IN, 200, 120));
        String name = Shelf.microcatheter().name();
        assertTrue(drawn.text("level:2").indexOf(name) != drawn.text("level:2").lastIndexOf(name),
                drawn.text("level:2"));
    }

    @Test
    void theSignOfEveryVerdictLiesOnItsGround() {
        Drawn drawn = Drawn.of(DRAWING.of(answer(level(Shelf.guide("7 Fr", "0.081 in"), 80)), Phase.IN, 200, 120));
        Ink ground = VerdictLook.BLOCKED.tone(Scheme.LIGHT).fill().ground().orElseThrow();
        assertTrue(drawn.marks("level:2").stream().map(Drawn.Mark::element).filter(Shape.class::isInstance)
                .anyMatch(shape -> ((Shape) shape).style().fill().ground().filter(ground::equals).isPresent()),
                drawn.text());
    }

    @Test
    void aNameIsCutOffOnlyInTheSmallestLettering() {
        String name = Shelf.microcatheter().name();
        Set<Boolean> whole = new HashSet<>();
        for (int width = 44; width <= 200; width += 4) {
            Drawn drawn = Drawn.of(DRAWING.of(answer(level(Shelf.microcatheter(), 80)), Phase.IN, width, 60));
            Words line = drawn.words().stream().filter(w -> w.text().startsWith(name.substring(0, 4))).findFirst()
                    .orElseThrow();
            whole.add(line.text().equals(name));
            assertTrue(line.text().equals(name) || line.sizePt() == 6.5, width + ": " + line);
        }
        assertEquals(Set.of(true, false), whole);
    }
}
