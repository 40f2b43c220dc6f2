/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.sheet;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Columns of a shelf's sheet. */
enum Column {
    ITEM, NAME, DEVICE, DI, LOT, SERIAL, EXPIRY, QUANTITY, LOCATION, PAR_LEVEL, PRICE;

    /** Returns the column that a heading means, whatever its capitals. */
    static Optional<Column> of(String heading) {
        return Arrays.stream(values()).filter(column -> column.heading().equalsIgnoreCase(heading.strip())).findFirst();
    }

    String heading() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** Whether all rows of an item say the same here, or nothing. */
    boolean isOfItem() {
        return this == NAME || this == DEVICE || this == DI || this == PAR_LEVEL || this == PRICE;
    }

    boolean isNumber() {
        return this == QUANTITY || this == PAR_LEVEL || this == PRICE;
    }
}
