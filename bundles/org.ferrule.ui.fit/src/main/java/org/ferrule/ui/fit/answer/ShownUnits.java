/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.answer;

import java.util.List;
import java.util.Optional;

import org.ferrule.chart.words.UnitPreferences;
import org.ferrule.quantity.LengthUnit;
import org.ferrule.ui.Services;

/** The units that the user prefers, as the words for answers want them. */
public final class ShownUnits {

    private static final int LEAST_DECIMALS = 1;
    private static final int MOST_DECIMALS = 4;

    private ShownUnits() {
    }

    /** Returns the first unit of the preferences, as they stand now. */
    public static UnitPreferences first() {
        var preferences = Services.get(org.ferrule.ui.preferences.UnitPreferences.class);
        int decimals = Math.max(LEAST_DECIMALS,
                Math.min(MOST_DECIMALS, preferences.decimals(LengthUnit.MILLIMETRE)));
        return new UnitPreferences(preferences.units().get(0), Optional.empty(), decimals);
    }

    /** Returns the first two units of the preferences, as they stand now. */
    public static UnitPreferences now() {
        var preferences = Services.get(org.ferrule.ui.preferences.UnitPreferences.class);
        List<LengthUnit> units = preferences.units();
        return units.size() > 1 ? first().with(units.get(1)) : first();
    }
}
