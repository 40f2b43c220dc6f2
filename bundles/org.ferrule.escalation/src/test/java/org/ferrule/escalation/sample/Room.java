/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.sample;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.ferrule.escalation.equipment.Instruments;
import org.ferrule.escalation.equipment.Stock;
import org.ferrule.fit.FitSolver;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.Parts;
import org.ferrule.fit.rules.Limits;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.TestRules;
import org.ferrule.quantity.Dimension;
import org.ferrule.shelf.stock.Item;
import org.ferrule.shelf.stock.Lot;
import org.ferrule.shelf.stock.Shelf;

/** A room with a few invented devices, a rule set and a shelf in the making. */
public final class Room {
    /** The day of all cases. */
    public static final LocalDate DAY = LocalDate.of(2026, 4, 2);

    private final List<Device> devices = new ArrayList<>();
    private final List<Item> items = new ArrayList<>();
    private final Map<String, String> equipment = new HashMap<>();

    /** A room with sheath, guides, wires, microcatheter, balloons, extension, burr and its wire, all in the library. */
    public static Room usual() {
        Room room = new Room();
        room.add(SampleDevice.device("sheath", DeviceKind.INTRODUCER_SHEATH).size("7 Fr").length("11 cm")
                .working("11 cm", "2.4 mm").section("tube", "0 mm", "11 cm", "3.0 mm"));
        room.add(guide("guide-6", "0.070 in", "2.0 mm"));
        room.add(guide("guide-7", "0.081 in", "2.3 mm"));
        room.add(SampleDevice.rod("wire-190", DeviceKind.GUIDEWIRE, "190 cm", "0.014 in"));
        room.add(SampleDevice.rod("wire-300", DeviceKind.GUIDEWIRE, "300 cm", "0.014 in"));
        room.add(SampleDevice.rod("burr-wire", DeviceKind.GUIDEWIRE, "330 cm", "0.009 in"));
        room.add(SampleDevice.rod("micro", DeviceKind.MICROCATHETER, "135 cm", "0.9 mm").takesWire("0.014 in")
                .overTheWire("135 cm", "0.018 in"));
        room.balloon("balloon-1.0", "1.0 mm", "0.60 mm");
        room.balloon("balloon-1.5", "1.5 mm", "0.70 mm");
        room.balloon("balloon-2.5", "2.5 mm", "0.80 mm");
        room.add(SampleDevice.rod("burr-1.25", DeviceKind.ROTATIONAL_BURR, "135 cm", "1.43 mm").takesWire("0.009 in")
                .overTheWire("135 cm", "0.012 in"));
        room.add(SampleDevice.device("extension-6", DeviceKind.GUIDE_EXTENSION).size("6 Fr").length("150 cm")
                .section("tube", "0 mm", "25 cm", "0.067 in").section("rod", "25 cm", "150 cm", "0.5 mm")
                .lumen("tube", Lumen.Use.WORKING, Lumen.Opening.COLLAR, "0 mm", "25 cm")
                .bore("0 mm", "25 cm", "0.056 in"));
        return room;
    }

    private static SampleDevice guide(String id, String inner, String outer) {
        return SampleDevice.guide(id, inner).section("shaft", "0 mm", "100 cm", outer);
    }

    /** Adds a device. */
    public Room add(SampleDevice device) {
        devices.add(device.device());
        return this;
    }

    /** Adds a rapid-exchange balloon of that nominal diameter and crossing profile. */
    public Room balloon(String id, String nominal, String profile) {
        Parts.BalloonPart balloon = new Parts.BalloonPart("balloon", Optional.of(Dimension.lenient(nominal)),
                Optional.of(Dimension.lenient("15 mm")), Optional.empty(), Optional.empty(), List.of());
        return add(SampleDevice.balloon(id, profile, "0.6 mm").parts(new Parts(Optional.of(balloon), Optional.empty(),
                Optional.empty(), Optional.empty(), List.of(), Optional.empty())));
    }

    /** Puts units of a device on the shelf; the item is called like the device. */
    public Room has(String device, int count) {
        return has(device, count, DAY.plusYears(1));
    }

    /** Puts units of a device on the shelf that expire on that day. */
    public Room has(String device, int count, LocalDate expiry) {
        return has(device, device, count, expiry);
    }

    /** The same, with an item that is not called like the device. */
    public Room has(String item, String device, int count, LocalDate expiry) {
        items.add(new Item(item, Optional.of(device), Optional.empty(),
                count == 0 ? List.of() : List.of(new Lot("L-" + device, Optional.of(expiry), count, "cabinet 1",
                        Optional.empty())),
                0, Optional.of(BigDecimal.TEN), device));
        return this;
    }

    /** Puts equipment on the shelf that is no device. */
    public Room hasEquipment(String word) {
        items.add(new Item("item " + word, Optional.empty(), Optional.empty(),
                List.of(new Lot("", Optional.empty(), 1, "room", Optional.empty())), 0, Optional.empty(), word));
        equipment.put("item " + word, word);
        return this;
    }

    /** The shelf. */
    public Stock stock() {
        return new Stock(new Shelf(items), equipment);
    }

    /** All devices with their rules. */
    public Instruments instruments() {
        return new Instruments(devices, TestRules.silent().spans("0.01 mm", "0.01 mm").required("0.04 mm")
                .required(Set.of(), Set.of(DeviceKind.GUIDEWIRE), "0.01 mm")
                .growth("1.0", "1.1", "1.2").wireAhead("10 cm").allow(Limits.Purpose.HUB_AND_VALVE, "8 cm")
                .allow(Limits.Purpose.GRIP, "10 cm").rules(), FitSolver.standard(List.of()));
    }
}
