/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import org.eclipse.emf.ecore.EAttribute;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.quantity.FigureKind;
import org.ferrule.quantity.Length;
import org.ferrule.ui.Services;
import org.ferrule.ui.devices.table.RowColumn;
import org.ferrule.ui.look.ModelLabels;
import org.ferrule.ui.preferences.FigureWords;
import org.ferrule.ui.preferences.UnitPreferences;

/** The columns of the table of devices. */
final class DeviceColumns {

    private static final int FIGURE_CHARACTERS = 12;

    private final DeviceProblems problems;
    private final UnitPreferences units = Services.get(UnitPreferences.class);
    private final FigureWords words = new FigureWords(units);

    DeviceColumns(DeviceProblems problems) {
        this.problems = problems;
    }

    List<RowColumn<DeviceRow>> create() {
        return List.of(
                text(Literals.DEVICE_PARTS__ID, 20).withImage(problems::image),
                text(Literals.DEVICE_PARTS__NAME, 30),
                text(Literals.DEVICE_PARTS__KIND, 18),
                text(Literals.DEVICE_PARTS__MAKER, 20),
                text(Literals.DEVICE_PARTS__SIZE, 12),
                figure("Largest diameter", FigureKind.OUTER_DIAMETER, DeviceFigures::largestDiameter)
                        .explained(
                                "The largest outer diameter of the shaft: the crossing profile of a balloon or stent"),
                figure("Main lumen", FigureKind.INNER_DIAMETER, DeviceFigures::mainLumen)
                        .explained("The least inner diameter of the first working lumen"),
                figure("Effective length", FigureKind.LENGTH, DeviceFigures::effectiveLength),
                figure("Wire up to", FigureKind.WIRE_DIAMETER, DeviceFigures::takesWire)
                        .explained("The largest wire that its maker states for it"),
                RowColumn.<DeviceRow>of("Problems", 9, problems::count).sortedBy(problems::sortable));
    }

    private static RowColumn<DeviceRow> text(EAttribute feature, int characters) {
        return RowColumn.<DeviceRow>of(ModelLabels.feature(feature), characters, row -> row.text(feature))
                .explained(ModelLabels.description(feature)).mutedWhen(row -> row.inherits(feature));
    }

    private RowColumn<DeviceRow> figure(String title, FigureKind kind,
            Function<DeviceFigures, Optional<Length>> figure) {
        return RowColumn.<DeviceRow>of(title, FIGURE_CHARACTERS,
                row -> figure.apply(row.figures()).map(length -> word(length, kind)).orElse(""))
                .sortedBy(row -> figure.apply(row.figures()).orElse(null));
    }

    private String word(Length length, FigureKind kind) {
        return words.format(units.units().get(0), kind).format(length);
    }
}
