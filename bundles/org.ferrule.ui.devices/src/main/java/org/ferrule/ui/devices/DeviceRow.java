/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices;

import java.util.Locale;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EAttribute;
import org.ferrule.model.DeviceKind;
import org.ferrule.model.DeviceLine;
import org.ferrule.model.DeviceParts;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.ui.devices.part.CellWords;
import org.ferrule.ui.devices.part.Shown;

/** A device or a line in the table. Its figures are looked up when they are needed. */
final class DeviceRow {

    private final DeviceParts parts;
    private final DeviceLine line;
    private DeviceFigures figures;

    /**
     * Creates a row.
     *
     * @param line the line of the device, or null
     */
    DeviceRow(DeviceParts parts, DeviceLine line) {
        this.parts = parts;
        this.line = line;
    }

    DeviceParts parts() {
        return parts;
    }

    DeviceLine line() {
        return line;
    }

    /** Tells whether the value comes from the line. */
    boolean inherits(EAttribute feature) {
        return !parts.eIsSet(feature) && line != null && line.eIsSet(feature);
    }

    String text(EAttribute feature) {
        return CellWords.of(inherits(feature) ? line : parts, feature);
    }

    DeviceKind kind() {
        return inherits(Literals.DEVICE_PARTS__KIND) ? line.getKind() : parts.getKind();
    }

    DeviceFigures figures() {
        if (figures == null) {
            figures = DeviceFigures.of((DeviceParts) Shown.of(parts).complete());
        }
        return figures;
    }

    /** Tells whether every word of the filter is found in its id, name, maker, kind, size or catalogue code. */
    boolean matches(String filter) {
        String all = Stream.of(Literals.DEVICE_PARTS__ID, Literals.DEVICE_PARTS__NAME, Literals.DEVICE_PARTS__MAKER,
                Literals.DEVICE_PARTS__KIND, Literals.DEVICE_PARTS__SIZE, Literals.DEVICE_PARTS__MODEL).map(this::text)
                .reduce("", (a, b) -> a + "\n" + b).toLowerCase(Locale.ROOT);
        return Stream.of(filter.toLowerCase(Locale.ROOT).split("\\s+")).allMatch(all::contains);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof DeviceRow row && row.parts == parts;
    }

    @Override
    public int hashCode() {
        return System.identityHashCode(parts);
    }
}
