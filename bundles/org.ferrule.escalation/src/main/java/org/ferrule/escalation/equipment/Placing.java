/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.equipment;

import org.ferrule.escalation.state.SystemState;
import org.ferrule.escalation.state.Target;
import org.ferrule.escalation.technique.Placement;
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

    private Length protrusion(Placement placement) {
        Length wanted = placement.protrusion().orElse(Length.ZERO);
        return target.lesionStart().map(wanted::min).orElse(wanted);
    }
}
