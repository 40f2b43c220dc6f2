/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.equipment;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

import org.ferrule.escalation.state.SystemState;
import org.ferrule.escalation.technique.Carrier;
import org.ferrule.escalation.technique.Ladder;
import org.ferrule.escalation.technique.Move;
import org.ferrule.escalation.technique.Placement;
import org.ferrule.escalation.technique.Role;
import org.ferrule.escalation.technique.Setup;
import org.ferrule.escalation.technique.Slot;

/**
 * What may be drawn back while a move is made that does not need it: an anchor and a second wire, and if that is not
 * enough, a guide extension. What it takes to bring them forward again is not reckoned.
 */
final class DrawnBack {
    private static final List<Set<Slot>> LESS_AND_LESS = List.of(Set.of(), Set.of(Slot.ANCHOR, Slot.SECOND_WIRE),
            Set.of(Slot.EXTENSION), Set.of(Slot.ANCHOR, Slot.SECOND_WIRE, Slot.EXTENSION));

    private final Ladder ladder;

    DrawnBack(Ladder ladder) {
        this.ladder = ladder;
    }

    /** The sets of slots that may be emptied for a move, beginning with none; only what is filled and not needed. */
    List<Set<Slot>> choices(Move move, SystemState state) {
        Set<Slot> needed = needed(move);
        List<Set<Slot>> choices = new ArrayList<>();
        for (Set<Slot> wanted : LESS_AND_LESS) {
            Set<Slot> back = EnumSet.noneOf(Slot.class);
            wanted.stream().filter(slot -> !needed.contains(slot) && state.without(slot).isPresent())
                    .forEach(back::add);
            if (!choices.contains(back)) {
                choices.add(back);
            }
        }
        return choices;
    }

    /** The system without what is in these slots. */
    static SystemState without(Set<Slot> slots, SystemState state) {
        SystemState scene = state;
        for (Slot slot : slots) {
            scene = scene.without(slot).orElse(scene);
        }
        return scene;
    }

    private Set<Slot> needed(Move move) {
        Set<Slot> needed = EnumSet.noneOf(Slot.class);
        Stream<Setup> own = move instanceof Setup setup ? Stream.of(setup) : Stream.empty();
        Stream.concat(own, ladder.setupsOf(move).stream()).flatMap(setup -> setup.placements().stream())
                .map(Placement::slot).forEach(needed::add);
        if (move.roles().stream().map(Role::carrier).anyMatch(carrier -> carrier == Carrier.SECOND_WIRE)
                || needed.contains(Slot.ANCHOR)) {
            needed.add(Slot.SECOND_WIRE);
        }
        return needed;
    }
}
