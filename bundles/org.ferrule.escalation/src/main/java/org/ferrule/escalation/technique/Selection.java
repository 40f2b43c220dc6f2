/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.technique;

import java.util.Objects;
import java.util.Optional;
import java.util.Set;

import org.ferrule.fit.device.DeviceKind;

/**
 * Which devices may play a role, before it is asked whether they fit.
 *
 * @param kinds one of these; any when empty
 * @param devices ids, when only these may; any when empty
 * @param nominalDiameter of balloon, stent or cutter
 * @param nominalLength of balloon or stent
 * @param wire diameter of a guidewire, at its thickest
 * @param toVessel nominal diameter as a share of the vessel's, or of the branch's where the goal is a branch
 * @param equipment name of what is no device but must be there, as a console; the shelf knows it by that word
 */
public record Selection(Set<DeviceKind> kinds, Set<String> devices, LengthRange nominalDiameter,
        LengthRange nominalLength, LengthRange wire, ShareRange toVessel, Optional<String> equipment) {

    public Selection {
        kinds = Set.copyOf(kinds);
        devices = Set.copyOf(devices);
        Objects.requireNonNull(nominalDiameter, "nominalDiameter");
        Objects.requireNonNull(nominalLength, "nominalLength");
        Objects.requireNonNull(wire, "wire");
        Objects.requireNonNull(toVessel, "toVessel");
        Objects.requireNonNull(equipment, "equipment");
        if (equipment.isPresent() && !(kinds.isEmpty() && devices.isEmpty())) {
            throw new IllegalArgumentException("a role asks for the equipment \"" + equipment.get()
                    + "\" and for a device: only one of both can be meant");
        }
        if (equipment.isEmpty() && kinds.isEmpty() && devices.isEmpty()) {
            throw new IllegalArgumentException("a role names neither a kind, nor a device, nor equipment");
        }
    }

    /** Devices of these kinds, whatever their size. */
    public static Selection ofKinds(Set<DeviceKind> kinds) {
        return new Selection(kinds, Set.of(), LengthRange.ANY, LengthRange.ANY, LengthRange.ANY, ShareRange.ANY,
                Optional.empty());
    }
}
