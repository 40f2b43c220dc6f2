/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.authority;

import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.ferrule.fit.device.Claim;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.Phase;

/** "Takes a 0.014 in wire" is a claim of a device about wires in its wire lumen. */
public final class TakenWire {
    private TakenWire() {
    }

    /** The claim; absent when none is stated, or the lumen is another one. */
    public static Optional<Claim> claim(Device outer, Lumen lumen) {
        return outer.takesWire().filter(size -> outer.wireLumen().filter(lumen::equals).isPresent())
                .map(size -> new Claim(Claim.Type.LARGEST_DEVICE, Optional.of(size), Set.of(DeviceKind.GUIDEWIRE),
                        List.of(), List.of(), Optional.empty(), false, Set.of(Phase.IN), outer.wireSource()));
    }
}
