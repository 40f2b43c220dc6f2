/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import java.util.Optional;

import org.eclipse.emf.ecore.EReference;

/**
 * Resolves devices with their lines. A device inherits every value and part that it does not state; sections, lumens
 * and their sections are matched by name and refined value by value, those that only one of the two has are kept;
 * markers and claims are those of both, the line's first. The other lists are the device's if it has any, else the
 * line's. Source, page and note belong together and are inherited together; a round, an oval and a composed
 * cross-section exclude each other, and so do not mix. Ids and unknown keys are not inherited.
 */
public final class DeviceResolution {

    private DeviceResolution() {
    }

    /** Resolves a device with the line that it names in its library; one without a known line stands for itself. */
    public static ResolvedDevice resolve(Device device) {
        return new Merge(device, line(device).orElse(null)).run();
    }

    /** Returns the line that a device names in its library. */
    public static Optional<DeviceLine> line(Device device) {
        if (device.getLine() == null || !(device.eContainer() instanceof DeviceLibrary library)) {
            return Optional.empty();
        }
        return library.getLines().stream().filter(line -> device.getLine().equals(line.getId())).findFirst();
    }

    /**
     * Tells whether a size states all parts of a list or none, such as the rows of a compliance table. Of other lists
     * parts are matched with the line's by their names, or added to them.
     */
    public static boolean isStatedWhole(EReference place) {
        return Merge.isStatedWhole(place);
    }
}
