/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.preferences;

import java.util.stream.Collectors;

import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.FigureKind;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthFormat;
import org.ferrule.quantity.LengthUnit;

/** Says what a dimension amounts to, in the units that the user prefers. */
public final class FigureWords {

    /** What stands between the same figure in several units. */
    public static final String BETWEEN_UNITS = "  \u00b7  ";

    private final UnitPreferences preferences;

    /** Creates words in the preferred units. */
    public FigureWords(UnitPreferences preferences) {
        this.preferences = preferences;
    }

    /**
     * Returns the length in the preferred units, such as {@code 1.778 mm · 0.0700 in}. Outer diameters are rounded up,
     * inner diameters and clearances down.
     *
     * @param kind what kind of figure it is, or null if that is not known
     */
    public String of(Length length, FigureKind kind) {
        return preferences.units().stream().map(unit -> format(unit, kind).format(length))
                .collect(Collectors.joining(BETWEEN_UNITS));
    }

    /** Returns what a readable dimension states, in the preferred units; empty for one that cannot be read. */
    public String of(Dimension dimension, FigureKind kind) {
        if (!dimension.readable()) {
            return "";
        }
        return preferences.units().stream().map(unit -> in(dimension, format(unit, kind)))
                .collect(Collectors.joining(BETWEEN_UNITS));
    }

    /** Returns the format of figures of the kind in the unit. */
    public LengthFormat format(LengthUnit unit, FigureKind kind) {
        int decimals = preferences.decimals(unit);
        if (kind == null) {
            return LengthFormat.plain(unit, decimals);
        }
        return switch (kind) {
            case CLEARANCE -> LengthFormat.clearance(unit, decimals);
            case INNER_DIAMETER -> LengthFormat.atMost(unit, decimals);
            case OUTER_DIAMETER, WIRE_DIAMETER -> LengthFormat.atLeast(unit, decimals);
            default -> LengthFormat.plain(unit, decimals);
        };
    }

    private static String in(Dimension dimension, LengthFormat format) {
        return switch (dimension.meaning()) {
            case MINIMUM -> "\u2265 " + format.format(dimension.low().orElseThrow());
            case MAXIMUM -> "\u2264 " + format.format(dimension.high().orElseThrow());
            case RANGE -> ends(dimension, format);
            case SAMPLE -> format.format(dimension.label()) + " mean";
            default -> dimension.low().isPresent() && dimension.high().isPresent() ? ends(dimension, format)
                    : format.format(dimension.label());
        };
    }

    private static String ends(Dimension dimension, LengthFormat format) {
        return format.number(dimension.low().orElseThrow()) + " to " + format.format(dimension.high().orElseThrow());
    }
}
