/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.util.stream.Stream;

import org.ferrule.chart.words.UnitPreferences;
import org.ferrule.quantity.LengthUnit;

import picocli.CommandLine.Option;

/** In which unit diameters are written. */
public final class UnitOption {

    @Option(names = "--unit", paramLabel = "UNIT", description = "The unit of diameters: mm (default), in or Fr.")
    private String unit = LengthUnit.MILLIMETRE.symbol();

    /** The unit as preferences. */
    public UnitPreferences preferences() {
        return Stream.of(LengthUnit.MILLIMETRE, LengthUnit.INCH, LengthUnit.FRENCH)
                .filter(known -> known.symbol().equals(unit)).findFirst().map(UnitPreferences::in)
                .orElseThrow(() -> new CommandLineException("--unit must be mm, in or Fr, not \"" + unit + "\""));
    }
}
