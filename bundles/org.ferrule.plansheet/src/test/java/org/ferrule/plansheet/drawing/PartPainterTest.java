/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.drawing;

import static org.ferrule.chart.DeviceMaker.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.ferrule.chart.Drawn;
import org.ferrule.chart.look.Scheme;
import org.ferrule.escalation.state.SystemState;
import org.ferrule.picture.Box;
import org.ferrule.picture.Dash;
import org.ferrule.picture.Line;
import org.ferrule.picture.Path;
import org.ferrule.picture.Rect;
import org.ferrule.picture.Stroke;
import org.ferrule.plansheet.SamplePlan;
import org.ferrule.plansheet.words.PlanWords;
import org.junit.jupiter.api.Test;

/** What tells devices apart that are there, new or out, and where their parts lie. */
class PartPainterTest {
    private static final SystemState BARE = new SystemState(Optional.empty(), Optional.empty(), "guide-6",
            Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    private static final SystemState FULL = new SystemState(Optional.of("sheath"), Optional.of("valve"), "guide-6",
            Optional.of(new SystemState.PlacedExtension("extension", mm(50))), Optional.of("micro"),
            Optional.of("wire"), Optional.of("second"), Optional.of("b15"));

    private final PlanWords words = SamplePlan.words(SamplePlan.plan().ladder());
    private final Drawn there = Drawn.of(SystemDrawing.of(FULL, words, Scheme.LIGHT, 120, 1));
    private final Drawn brought = Drawn.of(SystemDrawing.change(BARE, FULL, words, Scheme.LIGHT, 120, 1));
    private final Drawn removed = Drawn.of(SystemDrawing.change(FULL, BARE, words, Scheme.LIGHT, 120, 1));

    private static List<Drawn.Mark> marks(Drawn drawn, Part.Place place) {
        return drawn.marks("part:" + place);
    }

    private static Rect rect(Drawn drawn, Part.Place place, int which) {
        return marks(drawn, place).stream().map(Drawn.Mark::element).filter(Rect.class::isInstance)
                .map(Rect.class::cast).skip(which).findFirst().orElseThrow();
    }

    private static Line line(Drawn drawn, Part.Place place) {
        return marks(drawn, place).stream().map(Drawn.Mark::element).filter(Line.class::isInstance)
                .map(Line.class::cast).findFirst().orElseThrow();
    }

    private static Stroke stroke(Rect rect) {
        return rect.style().stroke().orElseThrow();
    }

    @Test
    void whatIsOutHasABrokenOutlineAndNoFill() {
        assertEquals(Dash.SOLID, stroke(rect(there, Part.Place.ANCHOR, 0)).dash());
        assertEquals(Dash.SOLID, stroke(rect(brought, Part.Place.ANCHOR, 0)).dash());
        assertFalse(stroke(rect(removed, Part.Place.ANCHOR, 0)).dash().equals(Dash.SOLID));
        assertTrue(rect(removed, Part.Place.ANCHOR, 0).style().fill().isNone());
        assertFalse(line(removed, Part.Place.MAIN_WIRE).stroke().dash().equals(Dash.SOLID));
        assertTrue(rect(removed, Part.Place.MICROCATHETER, 0).style().fill().isNone());
    }

    @Test
    void whatIsNewHasAHatchOrADarkWallAndABolderLine() {
        assertTrue(rect(brought, Part.Place.ANCHOR, 0).style().fill().hatch().isPresent());
        assertFalse(rect(there, Part.Place.ANCHOR, 0).style().fill().hatch().isPresent());
        assertTrue(stroke(rect(brought, Part.Place.ANCHOR, 0)).widthMm() > stroke(rect(there, Part.Place.ANCHOR, 0))
                .widthMm());
        assertTrue(line(brought, Part.Place.MAIN_WIRE).stroke().widthMm() > line(there, Part.Place.MAIN_WIRE).stroke()
                .widthMm());
        assertFalse(rect(brought, Part.Place.SHEATH, 1).style().fill()
                .equals(rect(there, Part.Place.SHEATH, 1).style().fill()));
    }

    /** The lumen first, then the upper and the lower wall along its edges. */
    @Test
    void wallsOfATubeLieAlongTheEdgesOfItsLumen() {
        for (Part.Place place : List.of(Part.Place.SHEATH, Part.Place.GUIDE, Part.Place.EXTENSION,
                Part.Place.MICROCATHETER)) {
            Box lumen = rect(there, place, 0).box();
            Box upper = rect(there, place, 1).box();
            Box lower = rect(there, place, 2).box();
            assertEquals(lumen.yMm(), upper.centre().yMm(), 1e-9, place::toString);
            assertEquals(lumen.bottomMm(), lower.centre().yMm(), 1e-9, place::toString);
            for (Box wall : List.of(upper, lower)) {
                assertEquals(lumen.xMm(), wall.xMm(), 1e-9, place::toString);
                assertEquals(lumen.widthMm(), wall.widthMm(), 1e-9, place::toString);
                assertTrue(wall.heightMm() < lumen.heightMm() / 2, place::toString);
            }
        }
    }

    @Test
    void aTubeThatIsOutHasWallsAlone() {
        assertEquals(2, marks(removed, Part.Place.MICROCATHETER).size());
        assertEquals(3, marks(there, Part.Place.MICROCATHETER).size());
    }

    @Test
    void thePushRodOfAnExtensionReachesFromTheHubOfTheMicrocatheterToItsTube() {
        Line rod = line(there, Part.Place.EXTENSION);
        Box tube = rect(there, Part.Place.EXTENSION, 0).box();
        assertEquals(rect(there, Part.Place.MICROCATHETER, 0).box().xMm(), rod.from().xMm(), 1e-9);
        assertEquals(tube.xMm(), rod.to().xMm(), 1e-9);
        assertEquals(tube.yMm(), rod.to().yMm(), 1e-9);
        assertTrue(marks(there, Part.Place.GUIDE).stream().noneMatch(m -> m.element() instanceof Line));
    }

    @Test
    void anAnchorIsRoundAboutTheSecondWire() {
        Rect anchor = rect(there, Part.Place.ANCHOR, 0);
        assertEquals(line(there, Part.Place.SECOND_WIRE).from().yMm(), anchor.box().centre().yMm(), 1e-9);
        assertEquals(Math.min(anchor.box().widthMm(), anchor.box().heightMm()) / 2, anchor.cornerRadiusMm(), 1e-9);
    }

    @Test
    void theLesionLiesAboveAndBelowTheMainWireBeforeItsTip() {
        List<Box> wedges = there.marks("").stream().filter(m -> m.element() instanceof Path).map(Drawn.Mark::box)
                .toList();
        Line wire = line(there, Part.Place.MAIN_WIRE);
        assertEquals(2, wedges.size());
        Box upper = wedges.get(0);
        Box lower = wedges.get(1);
        assertTrue(upper.bottomMm() < wire.from().yMm() && wire.from().yMm() < lower.yMm());
        assertEquals(wire.from().yMm() - upper.bottomMm(), lower.yMm() - wire.from().yMm(), 1e-9);
        assertEquals(upper.heightMm(), lower.heightMm(), 1e-9);
        assertTrue(upper.xMm() > rect(there, Part.Place.MICROCATHETER, 0).box().rightMm());
        assertTrue(upper.rightMm() < wire.to().xMm());
        Drawn without = Drawn.of(SystemDrawing.of(BARE, words, Scheme.LIGHT, 120, 1));
        assertTrue(without.marks("").stream().noneMatch(m -> m.element() instanceof Path), "no wire, no lesion");
    }

    /** From the middle of a body that does not lie in the row of its label, else from its tip, to the label. */
    @Test
    void aLineLeadsFromEveryBodyToItsLabel() {
        for (Part.Place place : Part.Place.values()) {
            List<Line> leader = there.marks("label:" + place).stream().map(Drawn.Mark::element)
                    .filter(Line.class::isInstance).map(Line.class::cast).toList();
            Box body = marks(there, place).stream().map(Drawn.Mark::box).reduce(Box::union).orElseThrow();
            Line last = leader.get(leader.size() - 1);
            boolean bent = place == Part.Place.VALVE || place == Part.Place.ANCHOR;
            assertEquals(bent ? 2 : 1, leader.size(), place::toString);
            assertEquals(bent ? body.centre().xMm() : body.rightMm(), last.from().xMm(), 1e-9, place::toString);
            assertEquals(last.from().yMm(), last.to().yMm(), 1e-9, place::toString);
            Box label = there.words().stream().filter(w -> w.group().equals("label:" + place)).findFirst()
                    .orElseThrow().box();
            assertTrue(last.to().xMm() < label.xMm() && label.xMm() - last.to().xMm() < 1.5, place::toString);
            assertEquals(label.centre().yMm(), last.to().yMm(), 0.3, place::toString);
            if (bent) {
                double edge = place == Part.Place.VALVE ? body.yMm() : body.bottomMm();
                Line first = leader.get(0);
                assertEquals(List.of(edge, last.from().yMm()).stream().sorted().toList(),
                        List.of(first.from().yMm(), first.to().yMm()).stream().sorted().toList(), place::toString);
                assertEquals(first.from().xMm(), first.to().xMm(), place::toString);
            }
        }
    }

    @Test
    void partsAreThereNewOrOut() {
        SystemState other = FULL.withMainWire("second");
        List<Part> parts = Parts.of(FULL, other, words.names());
        Part wire = parts.stream().filter(p -> p.place() == Part.Place.MAIN_WIRE).findFirst().orElseThrow();
        assertEquals(new Part(Part.Place.MAIN_WIRE, "Filo wire 190", Part.State.NEW, "Filo wire 300"), wire);
        Part micro = parts.stream().filter(p -> p.place() == Part.Place.MICROCATHETER).findFirst().orElseThrow();
        assertEquals(Part.State.OUT, micro.state());
        assertEquals("", micro.was());
        Part guide = parts.stream().filter(p -> p.place() == Part.Place.GUIDE).findFirst().orElseThrow();
        assertEquals(new Part(Part.Place.GUIDE, "Halden guide 6 Fr", Part.State.THERE, ""), guide);
    }

    @Test
    void theDrawingIsToldInWordsToo() {
        String told = SystemDrawing.change(BARE, FULL, words, Scheme.LIGHT, 120, 1).description();
        assertTrue(told.contains("sheath: Halden sheath 6 Fr (new)"), told);
        assertTrue(told.contains("guide catheter: Halden guide 6 Fr\n"), told);
    }
}
