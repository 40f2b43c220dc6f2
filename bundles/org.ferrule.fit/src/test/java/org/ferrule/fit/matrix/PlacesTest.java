/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.matrix;

import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import org.ferrule.fit.FitSolver;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.passage.Conditions;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.TestRules;
import org.ferrule.quantity.Length;
import org.junit.jupiter.api.Test;

/** Lines and columns are found again after a change. */
class PlacesTest {
    private static final ReadDevice A = read("a", "0.9 mm");
    private static final ReadDevice B = read("b", "0.8 mm");
    private static final ReadDevice C = read("c", "0.7 mm");

    private static ReadDevice read(String id, String diameter) {
        return ReadDevice.of(rod(id, DeviceKind.MICROCATHETER, "135 cm", diameter).device(), TestRules.exact().rules());
    }

    private static Places places(List<ReadDevice> now, List<ReadDevice> before) {
        return Places.ofColumns(now, before, true);
    }

    private static List<Integer> former(Places places) {
        return IntStream.range(0, places.size()).mapToObj(places::former).toList();
    }

    private static List<Boolean> same(Places places) {
        return IntStream.range(0, places.size()).mapToObj(places::same).toList();
    }

    @Test
    void whatMovedIsFoundByItsIdAndIsTheSame() {
        Places places = places(List.of(C, A), List.of(A, B, C));
        assertEquals(List.of(2, 0), former(places));
        assertEquals(List.of(true, true), same(places));
        assertArrayEquals(new int[0], places.touched());
    }

    @Test
    void whatIsNewHasNoFormerPlace() {
        Places places = places(List.of(A, C), List.of(A, B));
        assertEquals(List.of(0, -1), former(places));
        assertEquals(List.of(true, false), same(places));
        assertArrayEquals(new int[] { 1 }, places.touched());
    }

    @Test
    void whatChangedStandsWhereItStoodAndIsTouched() {
        Places places = places(List.of(A, read("b", "0.85 mm")), List.of(A, B));
        assertEquals(List.of(0, 1), former(places));
        assertEquals(List.of(true, false), same(places));
        assertTrue(places.sameNames(1));
    }

    @Test
    void namesOfSectionsThatChangedAreNotTheSame() {
        ReadDevice renamed = ReadDevice.of(device("b", DeviceKind.MICROCATHETER)
                .length("135 cm").section("other", "0 cm", "135 cm", "0.8 mm").device(), TestRules.exact().rules());
        assertFalse(places(List.of(A, renamed), List.of(A, B)).sameNames(1));
    }

    @Test
    void devicesOfOneIdAreCountedThrough() {
        ReadDevice twin = read("a", "0.6 mm");
        Places places = places(List.of(B, A, twin), List.of(A, twin, B));
        assertEquals(List.of(2, 0, 1), former(places));
    }

    @Test
    void underOtherTermsNothingIsTheSame() {
        Places places = Places.ofColumns(List.of(A, B), List.of(A, B), false);
        assertEquals(List.of(0, 1), former(places));
        assertEquals(List.of(false, false), same(places));
        assertTrue(places.sameNames(0));
        assertFalse(places.areMostlySame());
    }

    @Test
    void halfOfThemAreMost() {
        assertTrue(places(List.of(A, B), List.of(A, C)).areMostlySame());
        assertFalse(places(List.of(A, read("d", "1 mm"), B), List.of(A, C)).areMostlySame());
    }

    private static MatrixLine line(String name, String diameter) {
        SampleDevice guide = device("g", DeviceKind.GUIDE_CATHETER).length("100 cm")
                .lumen(name, Lumen.Use.WORKING, Lumen.Opening.HUB, "0 mm", "100 cm").bore("0 mm", "100 cm", diameter);
        return new MatrixLine(ReadDevice.of(guide.device(), TestRules.exact().rules()), guide.device().lumen(name));
    }

    @Test
    void linesAreFoundAgainByDeviceAndLumen() {
        MatrixLine main = line("main", "2 mm");
        MatrixLine side = line("side", "1 mm");
        Places moved = Places.ofLines(List.of(side, main), List.of(main, side), true);
        assertEquals(List.of(1, 0), former(moved));
        assertEquals(List.of(true, true), same(moved));
        Places widened = Places.ofLines(List.of(line("main", "3 mm"), side), List.of(main, side), true);
        assertEquals(List.of(false, true), same(widened));
        assertTrue(widened.sameNames(0));
        assertEquals(List.of(-1, 1), former(Places.ofLines(List.of(line("other", "2 mm"), side), List.of(main, side),
                true)));
    }

    @Test
    void anotherReachDirectionOrRuleSetIsAnotherQuestion() {
        RuleSet rules = TestRules.exact().rules();
        FitSolver solver = FitSolver.standard(List.of());
        MatrixQuestion question = new MatrixQuestion(List.of(line("main", "2 mm")), List.of(A), Direction.TIP_FIRST,
                Optional.empty(), rules, solver);
        assertTrue(question.asksTheSameAs(new MatrixQuestion(List.of(), List.of(B), Direction.TIP_FIRST,
                Optional.empty(), rules, solver)));
        for (MatrixQuestion other : List.of(
                new MatrixQuestion(List.of(), List.of(), Direction.OVER_WIRE_TAIL, Optional.empty(), rules, solver),
                new MatrixQuestion(List.of(), List.of(), Direction.TIP_FIRST, Optional.of(Length.ZERO), rules, solver),
                new MatrixQuestion(List.of(), List.of(), Direction.TIP_FIRST, Optional.empty(),
                        TestRules.usual().rules(), solver),
                new MatrixQuestion(List.of(), List.of(), Direction.TIP_FIRST, Optional.empty(),
                        new Conditions(List.of(), Optional.empty(), List.of(), true), rules, solver),
                new MatrixQuestion(List.of(), List.of(), Direction.TIP_FIRST, Optional.empty(), rules,
                        FitSolver.standard(List.of())))) {
            assertFalse(question.asksTheSameAs(other), other::toString);
        }
    }
}
