/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet;

import static org.ferrule.chart.DeviceMaker.mm;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.ferrule.chart.DeviceMaker;
import org.ferrule.chart.words.UnitPreferences;
import org.ferrule.escalation.equipment.Instruments;
import org.ferrule.escalation.equipment.Stock;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.escalation.plan.Planner;
import org.ferrule.escalation.state.Aim;
import org.ferrule.escalation.state.CaseFile;
import org.ferrule.escalation.state.SystemState;
import org.ferrule.escalation.state.Target;
import org.ferrule.escalation.technique.Costs;
import org.ferrule.escalation.technique.Ladder;
import org.ferrule.escalation.technique.Resource;
import org.ferrule.fit.FitSolver;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.plansheet.words.PlanWords;
import org.ferrule.quantity.LengthUnit;
import org.ferrule.shelf.stock.Item;
import org.ferrule.shelf.stock.Lot;
import org.ferrule.shelf.stock.Shelf;

/** A case with invented devices, planned by the real planner. */
public final class SamplePlan {
    public static final LocalDate DAY = LocalDate.of(2026, 4, 2);

    private SamplePlan() {
    }

    public static Instruments instruments() {
        Device sheath = new DeviceMaker("sheath", "Halden sheath 6 Fr", DeviceKind.INTRODUCER_SHEATH, "6 Fr")
                .length("11 cm").section("tube", 0, 110, "2.7 mm")
                .lumen("working", Lumen.Use.WORKING, Lumen.Opening.HUB, 0, 110, "2.22 mm").make();
        Device second = new DeviceMaker("second", "Filo wire 190", DeviceKind.GUIDEWIRE, "").length("190 cm")
                .section("core", 0, 1900, "0.014 in").make();
        List<Device> devices = new ArrayList<>(List.of(sheath, second));
        devices.addAll(List.of(org.ferrule.chart.Shelf.guide("6 Fr", "0.071 in"),
                org.ferrule.chart.Shelf.guide("7 Fr", "0.081 in"), org.ferrule.chart.Shelf.extension(),
                org.ferrule.chart.Shelf.balloon("b10", "0.70 mm"), org.ferrule.chart.Shelf.balloon("b15", "0.85 mm"),
                org.ferrule.chart.Shelf.microcatheter(), org.ferrule.chart.Shelf.wire(),
                org.ferrule.chart.Shelf.burr(), imaging(),
                org.ferrule.chart.Shelf.claimedStent("0.056 in")));
        return new Instruments(devices, org.ferrule.chart.Shelf.RULES, FitSolver.standard(List.of()));
    }

    /** Its papers state no diameter of its window. */
    private static Device imaging() {
        return new DeviceMaker("imaging", "Vedra imaging catheter", DeviceKind.IMAGING_CATHETER, "").length("135 cm")
                .takesWire("0.014 in").section("tip", 0, 20, "0.8 mm").section("window", 20, 160, "")
                .section("shaft", 160, 1350, "2.9 Fr")
                .lumen("wire", Lumen.Use.WIRE, Lumen.Opening.SIDE_PORT, 0, 16, "0.016 in").make();
    }

    public static Shelf shelf(int balloons) {
        return new Shelf(List.of(
                item("sb-10", "b10", "Lutra balloon 1.0 \u00d7 15", balloons, "A213", "2027-02-28"),
                item("sb-15", "b15", "Lutra balloon 1.5 \u00d7 15", 2, "A377", "2026-09-30"),
                item("mc", "micro", "Corvo microcatheter 135", 1, "M8", "2026-12-31"),
                item("ext", "extension", "Halden extension 6 Fr", 1, "X3", "2028-01-31"),
                item("w2", "second", "Filo wire 190", balloons, "W77", "2029-05-31"),
                item("burr-175", "burr", "Osmo burr 1.75", 1, "B1", "2026-03-01")));
    }

    private static Item item(String id, String device, String name, int quantity, String lot, String expiry) {
        return new Item(id, Optional.of(device), Optional.empty(),
                List.of(new Lot(lot, Optional.of(LocalDate.parse(expiry)), quantity, "cabinet 2, shelf B",
                        Optional.empty())),
                1, Optional.of(new BigDecimal("310")), name);
    }

    public static SystemState system() {
        return new SystemState(Optional.of("sheath"), Optional.empty(), "guide-6", Optional.empty(), Optional.empty(),
                Optional.of("wire"), Optional.empty(), Optional.empty());
    }

    public static CaseFile file(Map<String, Boolean> facts) {
        Aim aim = new Aim(Resource.TIME, 60,
                Map.of(Resource.TIME, 30.0, Resource.CONTRAST, 200.0, Resource.DOSE, 3000.0, Resource.MONEY, 4000.0),
                false, true, true, 1);
        Target target = new Target(Optional.of(mm(70)), Optional.of(mm(50)), Optional.of(mm(3)), Optional.of(mm(2)),
                Optional.of(mm(60)), List.of());
        return new CaseFile("Balloon stops at the cap", DAY, system(), target, Optional.of("stent"), facts, aim,
                new Costs(4, 20, 150, 0), List.of());
    }

    public static Plan plan() {
        return plan(Map.of("no-ostial", true));
    }

    public static Plan plan(Map<String, Boolean> facts) {
        return new Planner(instruments(), SampleLadder.ladder()).plan(file(facts), new Stock(shelf(4), Map.of()));
    }

    /** A plan of so many techniques with one try each and one caution. */
    public static Plan planOf(int techniques) {
        return new Planner(instruments(), SampleLadder.ladderOf(techniques)).plan(file(Map.of("true-lumen", true)),
                new Stock(shelf(40), Map.of()));
    }

    /** A plan of eighteen tries and more, with much to say of each. */
    public static Plan longPlan() {
        return new Planner(instruments(), SampleLadder.longLadder()).plan(file(Map.of("true-lumen", true)),
                new Stock(shelf(40), Map.of()));
    }

    public static PlanWords words(Ladder ladder) {
        return PlanWords.english(ladder, instruments(), shelf(4), UnitPreferences.in(LengthUnit.MILLIMETRE), "EUR");
    }
}
