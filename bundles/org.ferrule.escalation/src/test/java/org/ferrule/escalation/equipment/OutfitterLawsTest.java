/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.equipment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;

import org.ferrule.escalation.sample.Cases;
import org.ferrule.escalation.sample.Moves;
import org.ferrule.escalation.sample.Room;
import org.ferrule.escalation.state.CaseFile;
import org.ferrule.escalation.technique.Axis;
import org.ferrule.escalation.technique.Carrier;
import org.ferrule.escalation.technique.Goal;
import org.ferrule.escalation.technique.Ladder;
import org.ferrule.escalation.technique.Move;
import org.ferrule.escalation.technique.Setup;
import org.ferrule.escalation.technique.Task;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.shelf.stock.Item;
import org.ferrule.shelf.stock.Shelf;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

class OutfitterLawsTest {
    private static final Ladder NO_LADDER = Moves.ladder(List.of());
    private static final List<String> DEVICES = List.of("micro", "micro-open", "micro-tight", "balloon-1.0",
            "balloon-1.5",
            "balloon-2.5", "burr-1.25", "burr-wire", "extension-6", "wire-190");

    private static final List<Move> MOVES = List.of(Moves.burrWire(4), Moves.extension(2), Moves.secondWire(2),
            Moves.technique("balloon", Axis.PROFILE, Moves.tries(2, 0.5),
                    Moves.over("balloon", DeviceKind.BALLOON_CATHETER)),
            Moves.technique("burr", Axis.MODIFY, Moves.tries(2, 0.5), Moves.only("burr", "burr-1.25")));

    /** With a microcatheter that is narrow at its tip, so that only the other one takes a thicker wire. */
    private static Room room() {
        return Room.usual().add(SampleDevice.rod("micro-open", DeviceKind.MICROCATHETER, "135 cm", "0.9 mm")
                .overTheWire("135 cm", "0.018 in"))
                .add(SampleDevice.rod("micro-tight", DeviceKind.MICROCATHETER, "135 cm", "0.7 mm")
                        .lumen("wire", Lumen.Use.WIRE, Lumen.Opening.HUB, "0 mm", "135 cm")
                        .bore("0 mm", "100 cm", "0.018 in").bore("100 cm", "135 cm", "0.0155 in"));
    }

    private static List<Boolean> possible(Room room, CaseFile file, Shelf shelf) {
        Outfitter outfitter = Outfitter.of(room.instruments(), NO_LADDER, file, new Stock(shelf, Map.of()));
        return MOVES.stream().map(move -> outfitter.outfit(move, file.system()).isPossible()).toList();
    }

    @RepeatedTest(40)
    void removingALotNeverMakesAMovePossible(RepetitionInfo repetition) {
        Random random = new Random(20_260_402L + repetition.getCurrentRepetition());
        Room room = room();
        DEVICES.forEach(device -> room.has(device, random.nextInt(3)));
        CaseFile file = Cases.of(Cases.system(random.nextBoolean() ? "guide-6" : "guide-7",
                random.nextBoolean() ? "wire-190" : "wire-300"), Map.of(), Cases.TIME);
        Shelf full = room.stock().shelf();
        List<Boolean> before = possible(room, file, full);
        for (int i = 0; i < full.items().size(); i++) {
            List<Item> items = new ArrayList<>(full.items());
            items.set(i, items.get(i).withLots(List.of()));
            List<Boolean> after = possible(room, file, new Shelf(items));
            for (int m = 0; m < MOVES.size(); m++) {
                assertTrue(before.get(m) || !after.get(m), MOVES.get(m).id() + " without " + items.get(i).id());
            }
        }
    }

    @RepeatedTest(40)
    void aLargerLumenNeverMakesImpossibleWhatOnlyHasToPass(RepetitionInfo repetition) {
        Random random = new Random(77L + repetition.getCurrentRepetition());
        double inner = 1.4 + 0.6 * random.nextDouble();
        Room room = room().add(SampleDevice.guide("narrow", inner + " mm").section("shaft", "0 mm", "100 cm", "2.3 mm"))
                .add(SampleDevice.guide("wide", inner + 0.3 * random.nextDouble() + " mm").section("shaft", "0 mm",
                        "100 cm", "2.3 mm"));
        DEVICES.forEach(device -> room.has(device, random.nextInt(3)));
        Shelf shelf = room.stock().shelf();
        // A wire of 300 cm needs nothing that fills, so all roles only have to pass.
        List<Boolean> narrow = possible(room, Cases.of(Cases.system("narrow", "wire-300"), Map.of(), Cases.TIME),
                shelf);
        List<Boolean> wide = possible(room, Cases.of(Cases.system("wide", "wire-300"), Map.of(), Cases.TIME), shelf);
        for (int m = 0; m < MOVES.size(); m++) {
            assertTrue(wide.get(m) || !narrow.get(m), MOVES.get(m).id());
        }
    }

    @Test
    void aWorseCatheterIsTakenWhereTheBestOneBlocksTheWire() {
        Room room = room().add(SampleDevice.rod("thick-wire", DeviceKind.GUIDEWIRE, "330 cm", "0.016 in"))
                .has("micro-open", 1).has("micro-tight", 2).has("thick-wire", 1);
        CaseFile file = Cases.of(Cases.system("guide-6", "wire-300"), Map.of(), Cases.TIME);
        Setup usual = Moves.burrWire(4);
        Move thick = new Setup("thick", "thick", usual.hazard(),
                List.of(usual.roles().get(0), Moves.role("wire", Moves.ofDevices("thick-wire"),
                        Task.PASS, Carrier.NONE,
                        Goal.LESION, false)),
                List.of(), usual.setups(), usual.placements(), usual.costs(), true, usual.advice());
        MoveAnswer answer = Outfitter.of(room.instruments(), NO_LADDER, file, room.stock()).outfit(thick,
                file.system());
        assertTrue(answer.isPossible());
        assertEquals("micro-open", answer.device("catheter").orElseThrow());
        assertEquals(Choice.LATER_ROLES, answer.roles().get(0).choice().orElseThrow());
    }
}
