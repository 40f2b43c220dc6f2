/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

import org.ferrule.escalation.state.SystemState;
import org.ferrule.escalation.technique.Slot;

/**
 * A place in the system where something changes.
 *
 * @param slot the place
 * @param was id of the device that was there; absent when none was
 * @param is id of the device that is there now; absent when none is
 */
public record SystemChange(Slot slot, Optional<String> was, Optional<String> is) {

    public SystemChange {
        Objects.requireNonNull(slot, "slot");
        Objects.requireNonNull(was, "was");
        Objects.requireNonNull(is, "is");
    }

    /** All places where two systems differ, in the order of {@link Slot}. */
    public static List<SystemChange> between(SystemState before, SystemState after) {
        List<SystemChange> changes = new ArrayList<>();
        for (Slot slot : Slot.values()) {
            Function<SystemState, Optional<String>> at = state -> device(state, slot);
            if (!at.apply(before).equals(at.apply(after))) {
                changes.add(new SystemChange(slot, at.apply(before), at.apply(after)));
            }
        }
        return List.copyOf(changes);
    }

    /** The device in a place of a system. */
    public static Optional<String> device(SystemState state, Slot slot) {
        return switch (slot) {
            case GUIDE -> Optional.of(state.guide());
            case EXTENSION -> state.extension().map(SystemState.PlacedExtension::device);
            case MAIN_WIRE -> state.mainWire();
            case SECOND_WIRE -> state.secondWire();
            case ANCHOR -> state.anchor();
            case MICROCATHETER -> state.microcatheter();
        };
    }
}
