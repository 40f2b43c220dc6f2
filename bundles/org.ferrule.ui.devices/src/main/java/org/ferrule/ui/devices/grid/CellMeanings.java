/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.grid;

import org.eclipse.emf.ecore.EAttribute;
import org.ferrule.model.Features;
import org.ferrule.quantity.Dimension;
import org.ferrule.ui.Services;
import org.ferrule.ui.devices.sheet.CellReading;
import org.ferrule.ui.preferences.FigureWords;
import org.ferrule.ui.preferences.UnitPreferences;

/** Says what a text in a cell amounts to, in the units that the user prefers, and what is implausible about it. */
public final class CellMeanings {

    private final FigureWords words = new FigureWords(Services.get(UnitPreferences.class));

    /** Returns the words; empty for a text that means what it says. */
    public String of(EAttribute feature, CellReading reading) {
        String doubt = reading.doubt().map(message -> "\nDoubtful: " + message).orElse("");
        return reading.value() instanceof Dimension dimension
                ? words.of(dimension, Features.figureKind(feature).orElse(null)) + doubt : doubt.strip();
    }
}
