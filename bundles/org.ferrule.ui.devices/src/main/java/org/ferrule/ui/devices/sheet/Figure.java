/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.sheet;

import java.util.Optional;

import org.ferrule.quantity.Length;

/**
 * A figure of a device as a table shows it.
 *
 * @param text as it was typed; empty for none
 * @param length what to sort by, or null
 * @param inherited whether it comes from the line
 * @param placed whether the device has a part that states it, or could
 */
record Figure(String text, Length length, boolean inherited, boolean placed) {

    private static final Figure NOWHERE = new Figure("", null, false, false);

    static Figure at(Optional<Place> place) {
        return place.map(Figure::of).orElse(NOWHERE);
    }

    private static Figure of(Place place) {
        Object value = place.value();
        return new Figure(value == null ? "" : value.toString(), Places.length(place).orElse(null), place.inherited(),
                true);
    }
}
