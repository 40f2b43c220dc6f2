/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.equipment;

import java.util.Optional;

import org.ferrule.escalation.state.SystemState;
import org.ferrule.escalation.state.Target;
import org.ferrule.escalation.technique.Placement;
import org.ferrule.escalation.technique.Role;
import org.ferrule.escalation.technique.Setup;
import org.ferrule.escalation.technique.Slot;
import org.ferrule.quantity.Length;

/** Puts devices into a system. */
public final class Placing {
    private final Target target;

    /** Into a system on its way to that target. */
    public Placing(Target target) {
        this.target = target;
    }

    /** The system with a device in that slot. An extension is not advanced beyond where the lesion begins. */
    public SystemState place(SystemState state, Placement placement, String device) {
        return switch (placement.slot()) {
            case GUIDE -> state.withGuide(device);
            case EXTENSION -> state.withExtension(new SystemState.PlacedExtension(device, protrusion(placement)));
            case MAIN_WIRE -> state.withMainWire(device);
            case SECOND_WIRE -> state.withSecondWire(device);
            case ANCHOR -> state.withAnchor(device);
            case MICROCATHETER -> state.withMicrocatheter(device);
        };
    }

    /**
     * Whether a system already has all that a set-up leaves: in each slot something that could play the role. A guide is
     * always there, so a set-up that changes it is never in place by itself.
     */
    public boolean isInPlace(Setup setup, SystemState state, Instruments instruments) {
        return !setup.placements().isEmpty() && setup.placements().stream()
                .allMatch(placement -> isInPlace(setup, placement, state, instruments));
    }

    private boolean isInPlace(Setup setup, Placement placement, SystemState state, Instruments instruments) {
        Role role = setup.roles().stream().filter(r -> r.id().equals(placement.role())).findFirst().orElseThrow();
        return placement.slot() != Slot.GUIDE && device(placement.slot(), state).flatMap(instruments::find)
                .filter(device -> new Sizes(target).match(role, device)).isPresent();
    }

    private static Optional<String> device(Slot slot, SystemState state) {
        return switch (slot) {
            case GUIDE -> Optional.of(state.guide());
            case EXTENSION -> state.extension().map(SystemState.PlacedExtension::device);
            case MAIN_WIRE -> state.mainWire();
            case SECOND_WIRE -> state.secondWire();
            case ANCHOR -> state.anchor();
            case MICROCATHETER -> state.microcatheter();
        };
    }

    private Length protrusion(Placement placement) {
        Length wanted = placement.protrusion().orElse(Length.ZERO);
        return target.lesionStart().map(wanted::min).orElse(wanted);
    }
}
