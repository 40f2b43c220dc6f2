/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.words;

import static org.ferrule.chart.DeviceMaker.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.ferrule.chart.DeviceMaker;
import org.ferrule.chart.Shelf;
import org.ferrule.fit.FitSolver;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.Bend;
import org.ferrule.fit.passage.Conditions;
import org.ferrule.fit.passage.Occupant;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.passage.Through;
import org.ferrule.fit.stack.Level;
import org.ferrule.fit.stack.Placed;
import org.ferrule.fit.stack.Stack;
import org.ferrule.fit.stack.StackSolver;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.quantity.LengthUnit;
import org.junit.jupiter.api.Test;

/** Conditions, and the names of what lies in a lumen. */
class ConditionWordsTest {
    private static Occupant occupant(Device device, double tipAhead, boolean used) {
        return new Occupant(ReadDevice.of(device, Shelf.RULES), mm(tipAhead), used);
    }

    private static List<String> words(List<Occupant> inside, Optional<Through> through, List<Bend> bends) {
        return ConditionWords.of(new Conditions(inside, through, bends, false));
    }

    private static Bend bend(Bend.Where where, double radius, String angle, Double vessel) {
        return new Bend(where, mm(radius), angle.isEmpty() ? Optional.empty() : Optional.of(new BigDecimal(angle)),
                Optional.ofNullable(vessel).map(DeviceMaker::mm));
    }

    @Test
    void alonePassingStraightAndUnusedHasNoConditions() {
        assertEquals(List.of(), words(List.of(), Optional.empty(), List.of()));
        assertEquals(List.of("going in again after use, with the profile that use leaves"),
                ConditionWords.of(new Conditions(List.of(), Optional.empty(), List.of(), true)));
    }

    @Test
    void bendsOfALumenAndOfAVesselAreToldApart() {
        assertEquals(
                List.of("round bends of the lumen with a radius of 30 mm (90\u00b0), 40 mm",
                        "round bends of the vessel with a radius of 15 mm where it is 3 mm wide"),
                words(List.of(), Optional.empty(), List.of(bend(Bend.Where.VESSEL, 15, "", 3.0),
                        bend(Bend.Where.LUMEN, 30, "90", null), bend(Bend.Where.LUMEN, 40, "", null))));
        assertEquals(List.of("round bends of the vessel with a radius of 15 mm"),
                words(List.of(), Optional.empty(), List.of(bend(Bend.Where.VESSEL, 15, "", null))));
    }

    @Test
    void whatLiesBesideIsToldWithItsTipAndTheWireThatItRunsOver() {
        Device noWire = new DeviceMaker("b", "", DeviceKind.BALLOON_CATHETER, "").lumen("wire",
                Lumen.Use.WIRE, Lumen.Opening.HUB, 0, 250, "0.4 mm")
                .make();
        assertEquals(
                List.of("beside \u201cFilo wire 300\u201d, its tip 120 mm beyond the outer tip",
                        "beside \u201cLutra balloon x\u201d, its tip 30 mm inside the outer tip, over a wire of 0.36 mm, "
                                + "used before",
                        "beside \u201cb\u201d, its tip at the outer tip, its wire not stated"),
                words(List.of(occupant(Shelf.wire(), 120, false),
                        occupant(Shelf.balloon("x", "0.82 mm"), -30, true), occupant(noWire, 0, false)),
                        Optional.empty(), List.of()));
    }

    @Test
    void anExtensionIsToldWithItsTip() {
        Device extension = Shelf.extension();
        Through through = new Through(ReadDevice.of(extension, Shelf.RULES), extension.mainLumen().orElseThrow(),
                mm(80));
        assertEquals(List.of("through the guide extension \u201cHalden extension 6 Fr\u201d, its tip 80 mm beyond the "
                + "outer tip"), words(List.of(), Optional.of(through), List.of()));
        PairNames names = PairNames.of(Shelf.guide("6 Fr", "0.070 in"), Shelf.microcatheter())
                .with(new Conditions(List.of(occupant(Shelf.wire(), 0, false)), Optional.of(through), List.of(),
                        false));
        assertEquals("Halden extension 6 Fr", names.nameOf("extension"));
        assertEquals("Filo wire 300", names.nameOf("wire"));
        assertEquals("Corvo microcatheter 135", names.nameOf("micro"));
        assertEquals("Halden guide 6 Fr", names.nameOf("guide-6"));
        assertEquals("nobody", names.nameOf("nobody"));
    }

    @Test
    void everyTipIsThatOfItsOwnDevice() {
        Stack stack = new Stack(Optional.empty(), List.of(level(Shelf.guide("6 Fr", "0.070 in"), 0),
                level(Shelf.extension(), 50), level(Shelf.microcatheter(), 80)), Shelf.RULES);
        List<String> lines = new StackWords(ReasonWords.english(UnitPreferences.in(LengthUnit.MILLIMETRE)))
                .summary(StackSolver.answer(stack, FitSolver.standard(List.of())), Phase.IN);
        List<String> tips = lines.stream().filter(l -> l.contains("from the outermost hub")).toList();
        assertTrue(tips.get(0).startsWith("Halden guide 6 Fr: its tip lies 100.0 cm"), tips::toString);
        assertTrue(tips.get(1).startsWith("Halden extension 6 Fr: its tip lies 105.0 cm"), tips::toString);
        assertTrue(tips.get(2).startsWith("Corvo microcatheter 135: its tip lies 113.0 cm"), tips::toString);
    }

    private static Level level(Device device, double aheadMm) {
        return Level.of(new Placed(ReadDevice.of(device, Shelf.RULES), mm(aheadMm)));
    }

    @Test
    void anArgumentFitsOnlyItsOwnKindOfPlace() {
        Arrays.stream(ReasonCode.values()).map(SampleReasons::of)
                .forEach(reason -> reason.arguments().forEach(argument -> {
                    Set<Role> taking = Arrays.stream(Role.values()).filter(role -> role.takes(argument))
                            .collect(Collectors.toSet());
                    assertTrue(!taking.isEmpty() && taking.size() < Role.values().length / 2, argument::toString);
                }));
    }
}
