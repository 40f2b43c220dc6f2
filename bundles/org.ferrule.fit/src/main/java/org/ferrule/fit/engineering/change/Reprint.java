/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.change;

import java.util.Optional;

import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthFormat;
import org.ferrule.quantity.LengthUnit;
import org.ferrule.quantity.Sample;

/**
 * A printed dimension said again with other figures. The texts are in French, in which six decimals hold every length
 * exactly; they are for the solver, not for people.
 */
public final class Reprint {
    private static final LengthFormat FORMAT = LengthFormat.faithful(LengthUnit.FRENCH);

    private Reprint() {
    }

    /**
     * The dimension with its figure moved and everything else kept: a tolerance, the width of a range, a standard
     * deviation, and whether the figure is a minimum or a maximum.
     *
     * @param printed a readable dimension
     * @throws org.ferrule.quantity.QuantitySyntaxException when a figure would be negative; see {@link #leastMove}
     */
    public static Dimension movedBy(Dimension printed, Length by) {
        Length label = printed.label().plus(by);
        return Dimension.parse(switch (printed.meaning()) {
            case MINIMUM -> FORMAT.format(label) + " min";
            case MAXIMUM -> FORMAT.format(label) + " max";
            case RANGE -> FORMAT.number(label) + ".." + FORMAT.format(printed.high().orElseThrow().plus(by));
            case SAMPLE -> sample(label, printed.sample().orElseThrow());
            case STATED, NOMINAL, MEASURED -> plain(label, printed);
        });
    }

    private static String sample(Length mean, Sample sample) {
        String deviation = FORMAT.format(mean) + " sd " + FORMAT.format(sample.standardDeviation());
        return sample.n().isPresent() ? deviation + " n " + sample.n().getAsInt() : deviation;
    }

    private static String plain(Length label, Dimension printed) {
        Optional<String> tolerance = printed.low().flatMap(low -> printed.high()
                .map(high -> tolerance(printed.label().minus(low), high.minus(printed.label()))));
        return FORMAT.format(label) + tolerance.orElse("");
    }

    /** How far down a dimension can be moved, as a negative length or zero: to where its lowest figure is zero. */
    public static Length leastMove(Dimension printed) {
        return printed.low().orElse(printed.label()).min(printed.label()).negated();
    }

    /** A dimension without any spread. */
    public static Dimension exactly(Length value) {
        return within(value, value, value);
    }

    /** A dimension that states all three figures. */
    public static Dimension within(Length low, Length centre, Length high) {
        return Dimension.parse(FORMAT.format(centre) + tolerance(centre.minus(low), high.minus(centre)));
    }

    private static String tolerance(Length below, Length above) {
        return " +" + FORMAT.format(above) + "/-" + FORMAT.format(below);
    }
}
