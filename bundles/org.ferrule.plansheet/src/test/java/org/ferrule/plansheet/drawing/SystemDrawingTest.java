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
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.ferrule.chart.Drawn;
import org.ferrule.chart.look.Scheme;
import org.ferrule.escalation.state.SystemState;
import org.ferrule.picture.Box;
import org.ferrule.picture.Picture;
import org.ferrule.plansheet.SamplePlan;
import org.ferrule.plansheet.words.PlanWords;
import org.junit.jupiter.api.Test;

class SystemDrawingTest {
    private static final double WIDTH_MM = 90;

    private final PlanWords words = SamplePlan.words(SamplePlan.plan().ladder());

    /** All systems: each device in place or not. */
    private static Stream<SystemState> systems() {
        return IntStream.range(0, 1 << 7).mapToObj(bits -> new SystemState(some(bits, 0, "sheath"),
                some(bits, 1, "valve of a long name that goes on and on and on without an end in sight at all"),
                "guide-6", some(bits, 2, "extension").map(id -> new SystemState.PlacedExtension(id, mm(50))),
                some(bits, 3, "micro"), some(bits, 4, "wire"), some(bits, 5, "second"), some(bits, 6, "b15")));
    }

    private static Optional<String> some(int bits, int bit, String id) {
        return (bits >> bit & 1) == 1 ? Optional.of(id) : Optional.empty();
    }

    @Test
    void inEverySystemAllNamesStandApartOnThePaper() {
        systems().forEach(state -> {
            Picture picture = SystemDrawing.of(state, words, Scheme.LIGHT, WIDTH_MM, 1);
            Drawn drawn = Drawn.of(picture);
            assertEquals(List.of(), drawn.overlaps(), state::toString);
            assertEquals(List.of(), drawn.outside(picture.paper()), state::toString);
            assertEquals(state.devices().size(),
                    drawn.groups().stream().filter(g -> g.id().startsWith("label:")).count());
        });
    }

    @Test
    void everyChangeIsMarkedByAWordAndTellsWhatIsOut() {
        List<SystemState> all = systems().toList();
        SystemState bare = all.get(0);
        for (SystemState full : all) {
            Drawn brought = Drawn.of(SystemDrawing.change(bare, full, words, Scheme.DARK, WIDTH_MM, 1));
            assertEquals(full.devices().size() - 1L, count(brought, "new"), full::toString);
            assertEquals(List.of(), brought.overlaps(), full::toString);
            Drawn removed = Drawn.of(SystemDrawing.change(full, bare, words, Scheme.DARK, WIDTH_MM, 1));
            assertEquals(full.devices().size() - 1L, count(removed, "out"), full::toString);
        }
    }

    private static long count(Drawn drawn, String word) {
        return drawn.words().stream().filter(w -> w.text().equals(word)).count();
    }

    @Test
    void aDeviceInPlaceOfAnotherNamesBoth() {
        SystemState before = SamplePlan.system();
        String text = Drawn.of(SystemDrawing.change(before, before.withMainWire("second"), words, Scheme.LIGHT, 140, 1))
                .text("label:MAIN_WIRE");
        assertTrue(text.contains("new") && text.contains("Filo wire 190, in place of Filo wire 300"), text);
    }

    @Test
    void itSaysThatItIsNotToScale() {
        Picture picture = SystemDrawing.of(SamplePlan.system(), words, Scheme.LIGHT, WIDTH_MM, 1);
        assertTrue(Drawn.of(picture).text().contains("Not to scale"));
        assertFalse(picture.description().isBlank());
    }

    private static Box box(Drawn drawn, Part.Place place) {
        return drawn.marks("part:" + place).stream().map(Drawn.Mark::box).reduce(Box::union).orElseThrow();
    }

    /** Sheath, guide, extension, microcatheter, wire: each tip lies beyond that of the device around it. */
    @Test
    void tipsMakeAStaircaseAboutTheMainWire() {
        SystemState full = systems().skip((1 << 7) - 1L).findFirst().orElseThrow();
        Drawn drawn = Drawn.of(SystemDrawing.of(full, words, Scheme.LIGHT, WIDTH_MM, 1));
        double axis = box(drawn, Part.Place.MAIN_WIRE).centre().yMm();
        double tip = 0;
        for (Part.Place place : List.of(Part.Place.SHEATH, Part.Place.GUIDE, Part.Place.EXTENSION,
                Part.Place.MICROCATHETER, Part.Place.MAIN_WIRE)) {
            assertTrue(box(drawn, place).rightMm() > tip, place::toString);
            assertTrue(box(drawn, place).xMm() >= 0.5 && box(drawn, place).rightMm() < WIDTH_MM, place::toString);
            tip = box(drawn, place).rightMm();
        }
        Box guide = box(drawn, Part.Place.GUIDE);
        Box valve = box(drawn, Part.Place.VALVE);
        assertTrue(guide.yMm() < axis && axis < guide.bottomMm());
        assertTrue(valve.yMm() < guide.yMm() && guide.bottomMm() < valve.bottomMm(), "the valve is round the guide");
        assertEquals(guide.xMm(), valve.xMm(), 1e-9);
        assertEquals(box(drawn, Part.Place.SECOND_WIRE).centre().yMm(), box(drawn, Part.Place.ANCHOR).centre().yMm(),
                1e-9, "the anchor is on the second wire");
    }

    @Test
    void everyLabelSaysWhatLiesThere() {
        SystemState full = systems().skip((1 << 7) - 1L).findFirst().orElseThrow();
        Drawn drawn = Drawn.of(SystemDrawing.of(full, words, Scheme.LIGHT, 140, 1));
        assertTrue(drawn.text("label:GUIDE").contains("guide catheter"), drawn.text("label:GUIDE"));
        assertTrue(drawn.text("label:SHEATH").contains("sheath"), drawn.text("label:SHEATH"));
        assertTrue(drawn.text("label:ANCHOR").contains("anchor balloon"), drawn.text("label:ANCHOR"));
    }

    @Test
    void outerDevicesLieOutsideInnerOnes() {
        systems().forEach(state -> {
            List<Part> parts = Parts.of(state, state, words.names());
            Rows rows = new Rows(parts);
            List<Part.Place> tubes = parts.stream().map(Part::place).filter(p -> p.body() == Part.Body.TUBE).toList();
            for (int i = 1; i < tubes.size(); i++) {
                assertTrue(rows.upper(tubes.get(i - 1)) < rows.upper(tubes.get(i)), state::toString);
                assertTrue(rows.lower(tubes.get(i - 1)) > rows.lower(tubes.get(i)), state::toString);
            }
        });
    }
}
