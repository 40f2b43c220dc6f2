/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

import org.ferrule.chart.look.VerdictLook;
import org.ferrule.fit.matrix.FitCell;
import org.ferrule.quantity.LengthFormat;
import org.ferrule.quantity.LengthUnit;
import org.ferrule.ui.Services;
import org.ferrule.ui.preferences.UnitPreferences;

/** What cells say, in the unit that the user prefers. */
final class CellWords {

    private final UnitPreferences preferences = Services.get(UnitPreferences.class);
    private LengthFormat format;

    CellWords() {
        unitsChanged();
    }

    void unitsChanged() {
        LengthUnit unit = preferences.units().get(0);
        format = LengthFormat.clearance(unit, preferences.decimals(unit));
    }

    String verdict(FitCell cell) {
        return VerdictLook.of(cell.in()).word();
    }

    /** The worst clearance with its unit; empty where there is none. */
    String clearance(FitCell cell) {
        return cell.limiting().map(place -> format.format(place.worst())).orElse("");
    }

    /** The number of the worst clearance alone. */
    String number(FitCell cell) {
        return cell.limiting().map(place -> format.number(place.worst())).orElse("");
    }
}
