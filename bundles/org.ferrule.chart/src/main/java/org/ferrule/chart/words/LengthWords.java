/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.words;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.function.Function;

import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthFormat;
import org.ferrule.quantity.LengthUnit;

/** Writes lengths with their units, each kind rounded in its safe direction. */
public final class LengthWords {
    private static final int MOST_DECIMALS = 6;
    private static final int REQUIRED_DECIMALS = 4;
    private static final Length CENTIMETRES_FROM = Length.of("10", LengthUnit.MILLIMETRE);

    private final UnitPreferences units;

    public LengthWords(UnitPreferences units) {
        this.units = units;
    }

    /** The units in use. */
    public UnitPreferences units() {
        return units;
    }

    /** A clearance, rounded down. */
    public String clearance(Length value) {
        return inUnits(unit -> LengthFormat.clearance(unit, units.decimals(unit)).format(value));
    }

    /** The number of a clearance alone, in millimetres, rounded down. */
    public String clearanceMm(Length value) {
        return LengthFormat.clearance(LengthUnit.MILLIMETRE, units.millimetreDecimals()).number(value);
    }

    /**
     * A clearance, rounded down, with as many decimals as show on which side of another it lies (up to six).
     *
     * @param asked the clearance that it is compared with, as {@link #required} writes it
     */
    public String clearance(Length value, Length asked) {
        return inUnits(unit -> LengthFormat.clearance(unit, tellingDecimals(value, asked, unit)).format(value));
    }

    private int tellingDecimals(Length value, Length asked, LengthUnit unit) {
        int decimals = units.decimals(unit);
        BigDecimal written = written(asked, unit);
        int truth = Integer.signum(value.compareTo(asked));
        while (decimals < MOST_DECIMALS
                && value.in(unit, decimals, RoundingMode.FLOOR).compareTo(written) != truth) {
            decimals++;
        }
        return decimals;
    }

    private static BigDecimal written(Length asked, LengthUnit unit) {
        return asked.in(unit, REQUIRED_DECIMALS, RoundingMode.HALF_EVEN);
    }

    /** A clearance that a rule set asks for: as few decimals as are exact, at most four. */
    public String required(Length value) {
        return inUnits(unit -> plainNumber(written(value, unit)) + " " + unit.symbol());
    }

    /** The size of a clearance below zero, rounded up. */
    public String overlap(Length value) {
        return device(value.abs());
    }

    /** The diameter of a device, rounded up. */
    public String device(Length value) {
        return inUnits(unit -> LengthFormat.atLeast(unit, units.decimals(unit)).format(value));
    }

    /** The diameter of a lumen, rounded down. */
    public String lumen(Length value) {
        return inUnits(unit -> LengthFormat.atMost(unit, units.decimals(unit)).format(value));
    }

    /** A diameter as a label has it, to the nearest. */
    public String plain(Length value) {
        return inUnits(unit -> LengthFormat.plain(unit, units.decimals(unit)).format(value));
    }

    /** The smaller end of a diameter, as a number in the primary unit, rounded down. */
    public String lowEnd(Length value) {
        return LengthFormat.atMost(units.primary(), units.decimals(units.primary())).number(value);
    }

    /** The larger end of a diameter, as a number in the primary unit, rounded up. */
    public String highEnd(Length value) {
        return LengthFormat.atLeast(units.primary(), units.decimals(units.primary())).number(value);
    }

    /** A distance along a device without its sign, to the nearest: centimetres, below 1 cm millimetres. */
    public String length(Length value) {
        return along(value.abs(), RoundingMode.HALF_EVEN);
    }

    /** A distance that there is room for, rounded down. */
    public String room(Length value) {
        return along(value, RoundingMode.FLOOR);
    }

    /** A distance that is lacking, rounded up. */
    public String shortfall(Length value) {
        return along(value, RoundingMode.CEILING);
    }

    /** The thousandths of an inch of a clearance, rounded down, with one decimal and without a unit. */
    public String thousandths(Length clearance) {
        BigDecimal number = clearance.in(LengthUnit.INCH, 4, RoundingMode.FLOOR).movePointRight(3);
        boolean vanished = number.signum() == 0 && !clearance.equals(Length.ZERO);
        return vanished ? "<0.1" : number.toPlainString();
    }

    private static String along(Length value, RoundingMode rounding) {
        if (value.equals(Length.ZERO)) {
            return "0 " + LengthUnit.CENTIMETRE.symbol();
        }
        LengthUnit unit = value.abs().compareTo(CENTIMETRES_FROM) < 0 ? LengthUnit.MILLIMETRE : LengthUnit.CENTIMETRE;
        return LengthFormat.of(unit, 1, rounding).format(value);
    }

    private static String plainNumber(BigDecimal number) {
        BigDecimal stripped = number.stripTrailingZeros();
        return (stripped.scale() < 0 ? stripped.setScale(0) : stripped).toPlainString();
    }

    private String inUnits(Function<LengthUnit, String> written) {
        String first = written.apply(units.primary());
        return units.secondary().map(second -> first + " (" + written.apply(second) + ")").orElse(first);
    }
}
