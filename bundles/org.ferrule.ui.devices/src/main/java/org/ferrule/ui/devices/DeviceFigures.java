/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.model.DeviceParts;
import org.ferrule.model.Lumen;
import org.ferrule.model.LumenUse;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;

/**
 * The figures by which devices are compared in a table, as their labels print them.
 *
 * @param largestDiameter the largest outer diameter of any section: the crossing profile of a balloon or a stent
 * @param mainLumen the least inner diameter of the first working lumen
 * @param effectiveLength the effective length
 * @param takesWire the largest wire that it takes
 */
record DeviceFigures(Optional<Length> largestDiameter, Optional<Length> mainLumen, Optional<Length> effectiveLength,
        Optional<Length> takesWire) {

    /** Reads a device with all that it inherits. */
    static DeviceFigures of(DeviceParts device) {
        Stream<Dimension> diameters = device.getSections().stream()
                .flatMap(section -> Stream.of(section.getOd(), section.getOdProximal()));
        Stream<Dimension> ovals = device.getSections().stream().filter(section -> section.getOval() != null)
                .map(section -> section.getOval().getWidth());
        return new DeviceFigures(lengths(Stream.concat(diameters, ovals)).max(Comparator.naturalOrder()),
                device.getLumens().stream().filter(lumen -> lumen.getUse() == LumenUse.WORKING).findFirst()
                        .flatMap(DeviceFigures::least),
                length(device.getEffectiveLength()), length(device.getTakesWire()));
    }

    private static Optional<Length> least(Lumen lumen) {
        return lengths(
                lumen.getSections().stream().flatMap(section -> Stream.of(section.getId(), section.getIdDistal())))
                .min(Comparator.naturalOrder());
    }

    private static Stream<Length> lengths(Stream<Dimension> dimensions) {
        return dimensions.flatMap(dimension -> length(dimension).stream());
    }

    private static Optional<Length> length(Dimension dimension) {
        return Optional.ofNullable(dimension).filter(Dimension::readable).map(Dimension::label);
    }
}
