/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.fix;

import org.ferrule.quantity.DimensionRepair;

/** Says what a repair does. */
final class RepairWords {

    private RepairWords() {
    }

    /** Returns the line in a list of repairs. */
    static String label(DimensionRepair repair) {
        return switch (repair.kind()) {
            case UNIT_SPELLING -> "Spell the unit: " + repair.text();
            case DECIMAL_POINT -> "Write a decimal point: " + repair.text();
            case RANGE_ORDER -> "Exchange the ends: " + repair.text();
            case UNIT_MISSING -> "Add the unit: " + repair.text();
            case UNIT_LIKELY -> "Change the unit: " + repair.text();
            case MEANING -> "Say what it means: " + repair.text();
        };
    }

    /** Returns why it is offered. */
    static String reason(DimensionRepair repair) {
        return switch (repair.kind()) {
            case UNIT_SPELLING -> "The unit is known by another spelling.";
            case DECIMAL_POINT -> "Dimensions have a decimal point. This comma cannot separate thousands.";
            case RANGE_ORDER -> "A range names its lower end first.";
            case UNIT_MISSING -> "Of mm, in and Fr only this unit gives a plausible figure. Compare with the source.";
            case UNIT_LIKELY -> "With one letter more or less the figure is plausible. Compare with the source.";
            case MEANING -> "A plain figure counts as the centre. Choose what the source says.";
        };
    }
}
