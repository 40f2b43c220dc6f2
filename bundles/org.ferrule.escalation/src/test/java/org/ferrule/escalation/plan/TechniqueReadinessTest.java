/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.plan;

import static org.ferrule.escalation.sample.Moves.equipment;
import static org.ferrule.escalation.sample.Moves.ladder;
import static org.ferrule.escalation.sample.Moves.only;
import static org.ferrule.escalation.sample.Moves.over;
import static org.ferrule.escalation.sample.Moves.technique;
import static org.ferrule.escalation.sample.Moves.tries;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;

import org.ferrule.escalation.sample.Cases;
import org.ferrule.escalation.sample.Room;
import org.ferrule.escalation.technique.Axis;
import org.ferrule.escalation.technique.Technique;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.shelf.ready.Readiness;
import org.junit.jupiter.api.Test;

class TechniqueReadinessTest {
    private static final Technique BALLOON = technique("balloon", Axis.PROFILE, tries(2, 0.5),
            only("balloon", "balloon-1.0"), equipment("pressure syringe"));

    private static Optional<Readiness> of(Room room, Technique technique) {
        return TechniqueReadiness.of(room.instruments(), ladder(List.of(), technique), Cases.usual(), room.stock())
                .get(0).readiness();
    }

    private static Room room() {
        Room room = Room.usual();
        return room.hasEquipment("pressure syringe").hasEquipment("console");
    }

    @Test
    void theWorstNeedDecides() {
        Technique alone = technique("alone", Axis.PROFILE, tries(2, 0.5), only("balloon", "balloon-1.0"));
        assertEquals(Optional.of(Readiness.READY), of(room().has("balloon-1.0", 2), alone));
        assertEquals(Optional.of(Readiness.LAST_ONE), of(room().has("balloon-1.0", 1), alone));
        assertEquals(Optional.of(Readiness.EXPIRED), of(room().has("balloon-1.0", 1, Room.DAY.minusDays(1)), alone));
        assertEquals(Optional.of(Readiness.MISSING), of(room(), alone));
        assertEquals(Optional.of(Readiness.MISSING), of(Room.usual().has("balloon-1.0", 2), BALLOON));
    }

    @Test
    void whatIsOnlyTightIsASecondChoice() {
        // 0.070 in less 0.01 mm, and 1.71 mm with 0.01 mm above it: less than the 0.04 mm asked for.
        Room room = room().balloon("thick", "1.0 mm", "1.71 mm").has("thick", 3);
        Technique any = technique("any", Axis.PROFILE, tries(2, 0.5), only("balloon", "balloon-1.0", "thick"));
        assertEquals(Optional.of(Readiness.SUBSTITUTE), of(room, any));
    }

    @Test
    void whatNoDeviceCouldDoIsNotAsked() {
        assertEquals(Optional.empty(), of(room(), technique("covered", Axis.MODIFY, tries(1, 0.5),
                over("stent", DeviceKind.COVERED_STENT_SYSTEM))));
    }
}
