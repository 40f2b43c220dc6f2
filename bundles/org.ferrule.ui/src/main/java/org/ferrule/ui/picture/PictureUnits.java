/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.picture;

import java.util.List;

import org.ferrule.quantity.LengthUnit;
import org.ferrule.ui.preferences.UnitPreferences;

/** The user's units, for the words and figures of pictures. */
public final class PictureUnits {

    private static final int MOST_DECIMALS = 4;

    private PictureUnits() {
    }

    /** Returns the first two preferred units with the preferred decimals of a millimetre. */
    public static org.ferrule.chart.words.UnitPreferences of(UnitPreferences preferences) {
        List<LengthUnit> units = preferences.units();
        int decimals = Math.max(1, Math.min(MOST_DECIMALS, preferences.decimals(LengthUnit.MILLIMETRE)));
        return new org.ferrule.chart.words.UnitPreferences(units.get(0), units.stream().skip(1).findFirst(), decimals);
    }
}
