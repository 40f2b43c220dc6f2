/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import static org.ferrule.chart.DeviceMaker.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.ferrule.chart.DeviceMaker;
import org.ferrule.chart.Drawn;
import org.ferrule.chart.Shelf;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.chart.words.UnitPreferences;
import org.ferrule.fit.FitSolver;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.stack.Level;
import org.ferrule.fit.stack.Placed;
import org.ferrule.fit.stack.Stack;
import org.ferrule.fit.stack.StackAnswer;
import org.ferrule.fit.stack.StackSolver;
import org.ferrule.picture.Box;
import org.ferrule.picture.Dash;
import org.ferrule.picture.Line;
import org.ferrule.picture.Path;
import org.ferrule.picture.Rect;
import org.ferrule.picture.Segment;
import org.ferrule.quantity.LengthUnit;
import org.junit.jupiter.api.Test;

/** Drawings of stacks: lengths in one scale, diameters in another, everything where it lies. */
class StackScalesTest {
    private static final StackDrawing DRAWING = new StackDrawing(
            ReasonWords.english(UnitPreferences.in(LengthUnit.MILLIMETRE)));
    /** The edge at which lengths are left out, and the width of the bodies in a drawing of 200 mm. */
    private static final double EDGE_MM = 5;
    private static final double WIDTH_MM = 200 - 4 - 70 - 3;

    private static Level level(Device device, double aheadMm) {
        return Level.of(placed(device, aheadMm));
    }

    private static Placed placed(Device device, double aheadMm) {
        return new Placed(ReadDevice.of(device, Shelf.RULES), mm(aheadMm));
    }

    private static Drawn draw(Level... levels) {
        StackAnswer answer = StackSolver.answer(new Stack(Optional.empty(), List.of(levels), Shelf.RULES),
                FitSolver.standard(List.of()));
        return Drawn.of(DRAWING.of(answer, Phase.IN, 200, 120));
    }

    private static final Device GUIDE = Shelf.guide("6 Fr", "0.070 in");

    /** Tips at 0, 50 and 130 mm, the collar 200 mm proximal of 0; 30 mm before and 3 mm behind them are shown. */
    private final Drawn three = draw(level(GUIDE, 0), level(Shelf.extension(), 50), level(Shelf.microcatheter(), 80));

    private static double x(double station) {
        return EDGE_MM + (station + 230) * WIDTH_MM / (133 + 230);
    }

    private static List<Box> paths(Drawn drawn, int level) {
        return drawn.marks("level:" + level).stream().filter(m -> m.element() instanceof Path p
                && p.style().fill().ground().isPresent() && p.segments().size() == 5).map(Drawn.Mark::box).toList();
    }

    private static Box shaft(Drawn drawn, int level) {
        return paths(drawn, level).get(0);
    }

    @Test
    void tipsAndTheCollarLieAtTheirStations() {
        assertEquals(x(0), shaft(three, 0).rightMm(), 1e-9);
        assertEquals(x(50), shaft(three, 1).rightMm(), 1e-9);
        assertEquals(x(130), shaft(three, 2).rightMm(), 1e-9);
        Line collar = three.marks("level:1").stream().map(Drawn.Mark::element).filter(Line.class::isInstance)
                .map(Line.class::cast).findFirst().orElseThrow();
        assertEquals(x(-200), collar.from().xMm(), 1e-9);
        assertEquals(x(-200), collar.to().xMm(), 1e-9);
        assertEquals(shaft(three, 1).yMm(), collar.from().yMm(), 1e-6);
        assertEquals(shaft(three, 1).bottomMm(), collar.to().yMm(), 1e-6);
        assertEquals(EDGE_MM, shaft(three, 0).xMm(), 1e-9, "what goes on to the hub ends at the edge");
        assertEquals(x(-200), shaft(three, 1).xMm(), 1e-9, "the tube ends at its collar");
    }

    @Test
    void diametersAreInProportionAboutOneAxisAndTheCaptionTellsTheirScale() {
        double across = shaft(three, 0).heightMm() / 2;
        assertEquals(0.067 * 25.4 * across, shaft(three, 1).heightMm(), 1e-6);
        assertEquals(2.6 / 3 * across, paths(three, 2).get(1).heightMm(), 1e-6);
        for (int level = 1; level < 3; level++) {
            assertEquals(shaft(three, 0).centre().yMm(), shaft(three, level).centre().yMm(), 1e-6);
        }
        long times = Math.round(across / (WIDTH_MM / 363));
        assertTrue(three.text().contains("Diameters \u00d7 " + times + ";"), three.text());
    }

    @Test
    void lumensAreDrawnInTheirShafts() {
        double across = shaft(three, 0).heightMm() / 2;
        Box lumen = paths(three, 0).get(1);
        assertEquals(0.070 * 25.4 * across, lumen.heightMm(), 1e-6);
        assertEquals(x(0), lumen.rightMm(), 1e-9);
        Box tube = paths(three, 1).get(2);
        assertEquals(0.057 * 25.4 * across, tube.heightMm(), 1e-6);
        assertEquals(x(-200), tube.xMm(), 1e-9);
        assertEquals(x(50), tube.rightMm(), 1e-9);
    }

    /** The rod of 0.6 mm lies on the wall of the lumen of 1.778 mm around it. */
    @Test
    void thePushRodLiesAsideSoThatThereIsRoomBesideIt() {
        double across = shaft(three, 0).heightMm() / 2;
        Box rod = paths(three, 1).get(1);
        assertEquals(0.6 * across, rod.heightMm(), 1e-6);
        assertEquals((0.070 * 25.4 - 0.6) / 2 * across, rod.centre().yMm() - shaft(three, 0).centre().yMm(), 1e-6);
        assertEquals(x(-200), rod.rightMm(), 1e-9);
    }

    private static Device rod(String id, String diameter) {
        return new DeviceMaker(id, id, DeviceKind.OTHER, "").length("150 cm").section("rod", 0, 1500, diameter).make();
    }

    @Test
    void whatLiesSideBySideTouchesAndIsAsHighAsAllOfItTogether() {
        Drawn drawn = draw(level(GUIDE, 0), new Level(List.of(placed(rod("a", "1.4 mm"), 20)), placed(rod("b", "1 mm"),
                40)));
        Box first = paths(drawn, 1).get(0);
        Box second = paths(drawn, 1).get(1);
        assertEquals(first.bottomMm(), second.yMm(), 1e-6);
        assertEquals(1.4, first.heightMm() / second.heightMm(), 1e-6);
        double axis = shaft(drawn, 0).centre().yMm();
        assertEquals(axis, (first.yMm() + second.bottomMm()) / 2, 1e-6);
        assertEquals((20.0 - 40) / -1, (second.rightMm() - first.rightMm()) * 73 / WIDTH_MM, 1e-6, "tips 20 mm apart");
        // Nothing is higher than the room, which a guide alone fills.
        assertTrue(second.bottomMm() - first.yMm() <= shaft(three, 0).heightMm() + 1e-6);
        assertEquals(2 / 2.4, shaft(drawn, 0).heightMm() / (second.bottomMm() - first.yMm()), 1e-6);
    }

    /** From 1 mm at the tip to 2 mm at the hub, a metre away: 1.03 mm at the edge, 30 mm from the tip. */
    @Test
    void aTaperIsCutAtTheEdge() {
        Device tapered = new DeviceMaker("taper", "Taper", DeviceKind.OTHER, "").length("100 cm")
                .taper("shaft", 0, 1000, "1 mm", "2 mm").make();
        Path path = (Path) draw(level(tapered, 0)).marks("level:0").stream().map(Drawn.Mark::element)
                .filter(Path.class::isInstance).findFirst().orElseThrow();
        List<Segment> corners = path.segments();
        double left = corners.get(3).points().get(0).yMm() - corners.get(0).points().get(0).yMm();
        double right = corners.get(2).points().get(0).yMm() - corners.get(1).points().get(0).yMm();
        assertEquals(1.03, left / right, 1e-6);
        assertEquals(EDGE_MM, corners.get(0).points().get(0).xMm(), 1e-9);
    }

    @Test
    void aDiameterThatIsNotStatedHasABrokenOutlineOfAMillimetre() {
        Drawn drawn = draw(level(GUIDE, 0), level(rod("unknown", ""), 20));
        Path path = (Path) drawn.marks("level:1").stream().map(Drawn.Mark::element).filter(Path.class::isInstance)
                .findFirst().orElseThrow();
        assertFalse(path.style().stroke().orElseThrow().dash().equals(Dash.SOLID));
        assertEquals(0.5, path.bounds().heightMm() / shaft(drawn, 0).heightMm(), 1e-6);
        Path known = (Path) drawn.marks("level:0").stream().map(Drawn.Mark::element).filter(Path.class::isInstance)
                .findFirst().orElseThrow();
        assertEquals(Dash.SOLID, known.style().stroke().orElseThrow().dash());
    }

    @Test
    void aValveIsDrawnAtTheHubBeyondTheEdge() {
        Device valve = new DeviceMaker("valve", "Valve", DeviceKind.HAEMOSTASIS_VALVE, "")
                .lumen("bore", Lumen.Use.WORKING, Lumen.Opening.HUB, 0, 0, "0.1 in").make();
        Drawn drawn = draw(level(GUIDE, 0), level(valve, 0), level(Shelf.microcatheter(), 80));
        Rect box = (Rect) drawn.marks("level:1").stream().map(Drawn.Mark::element).filter(Rect.class::isInstance)
                .findFirst().orElseThrow();
        assertTrue(box.box().rightMm() < EDGE_MM && box.box().xMm() > 0);
        assertEquals(shaft(drawn, 0).centre().yMm(), box.box().centre().yMm(), 1e-6);
        assertTrue(box.box().heightMm() > shaft(drawn, 0).heightMm());
        assertTrue(drawn.text("level:1").contains("at the hub") && drawn.text("level:1").contains("Valve"),
                drawn.text("level:1"));
        assertFalse(drawn.text("level:0").contains("at the hub"));
        assertFalse(drawn.text("level:2").contains("at the hub"));
    }

    /** From the upper edge of each tip to a label to the right of all bodies. */
    @Test
    void everyNameHasALeaderFromTheTipOfItsDeviceAndItsClearance() {
        double[] tips = { 0, 50, 130 };
        double right = EDGE_MM + WIDTH_MM;
        double above = 0;
        for (int level = 0; level < 3; level++) {
            Path leader = three.marks("level:" + level).stream().map(Drawn.Mark::element)
                    .filter(Path.class::isInstance).map(Path.class::cast)
                    .filter(p -> p.style().fill().isNone() && p.segments().size() == 3).findFirst().orElseThrow();
            assertEquals(x(tips[level]), leader.segments().get(0).points().get(0).xMm(), 1e-9);
            Box tip = level == 2 ? paths(three, 2).get(0) : shaft(three, level);
            assertTrue(leader.segments().get(0).points().get(0).yMm() > tip.yMm(), "within its upper wall");
            assertEquals(right + 3, leader.segments().get(2).points().get(0).xMm(), 1e-9);
            double y = leader.segments().get(2).points().get(0).yMm();
            assertTrue(y > above, "names from the outermost to the innermost");
            above = y;
            int of = level;
            Drawn.Words name = three.words().stream().filter(w -> w.group().equals("level:" + of)).reduce((a, b) -> b)
                    .orElseThrow();
            assertTrue(name.box().xMm() > right + 3);
            assertEquals(y, name.box().centre().yMm(), 0.3);
        }
        assertTrue(three.words().stream().filter(w -> w.text().matches("-?\\d\\.\\d\\d mm"))
                .allMatch(w -> Math.abs(w.box().rightMm() - 198) < 1e-6));
    }
}
