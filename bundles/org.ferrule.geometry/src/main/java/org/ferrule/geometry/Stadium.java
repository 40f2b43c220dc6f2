/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

import java.math.BigInteger;
import java.util.List;
import org.ferrule.quantity.Length;

/**
 * The outline of an oval shaft: two half discs of the height's diameter, joined by two flats.
 *
 * @param width the larger outer dimension
 * @param height the smaller outer dimension, more than zero and at most the width
 */
public record Stadium(Length width, Length height) implements Body {

    /**
     * Checks the dimensions.
     *
     * @throws IllegalArgumentException if the height is not positive or exceeds the width
     */
    public Stadium {
        if (height.compareTo(Length.ZERO) <= 0 || height.compareTo(width) > 0) {
            throw new IllegalArgumentException("not an oval of width x height: " + width + " x " + height);
        }
    }

    /** Returns the smallest circle round the stadium: its diameter is the width. The discs are the two round ends. */
    @Override
    public Enclosure enclosure() {
        return new Enclosure(width, width, ends(0));
    }

    /**
     * Returns the smallest circle round the stadium and a disc that may lie anywhere beside it. The best place for the
     * disc is the middle of a flat. With s the distance of the centres of the ends, h the height and q the diameter of
     * the disc, the circle round the stadium leaves room for the disc if s &gt;= 2q; else its diameter is
     * q + h + s^2/(4q). The result's discs are the two round ends and then the free disc.
     *
     * @param disc a diameter of zero or more
     * @throws IllegalArgumentException if the diameter is negative
     */
    // The circle of radius R about (0, y) touches both ends and the disc: sqrt(s^2/4+y^2) + h/2 = R = h/2 + q - y.
    // No other place is better: the circles about both ends reach the disc's centre only inside the lens of their
    // centres widened by R - q/2, and that lies in the stadium widened by q/2, which the centre may not enter.
    @Override
    public Enclosure with(Length disc) {
        if (disc.isNegative()) {
            throw new IllegalArgumentException("negative diameter: " + disc);
        }
        Length span = width.minus(height);
        boolean hides = span.compareTo(disc.times(2)) >= 0;
        Bounds diameter = hides ? Bounds.exactly(width) : beside(span, disc);
        double lift = hides ? 0 : disc.mm() / 2 - span.mm() * span.mm() / (8 * disc.mm());
        return new Enclosure(diameter.lower(), diameter.upper(), place(disc, lift));
    }

    private Bounds beside(Length span, Length disc) {
        BigInteger s = BigInteger.valueOf(span.thirdNanometres());
        BigInteger q = BigInteger.valueOf(disc.thirdNanometres());
        BigInteger sum = BigInteger.valueOf(disc.plus(height).thirdNanometres());
        BigInteger fourfold = q.shiftLeft(2);
        return Bounds.ofQuotient(sum.multiply(fourfold).add(s.multiply(s)), fourfold);
    }

    private List<PlacedDisc> place(Length disc, double liftMm) {
        List<PlacedDisc> ends = ends(-liftMm);
        return List.of(ends.get(0), ends.get(1), new PlacedDisc(0, height.plus(disc).mm() / 2 - liftMm, disc));
    }

    private List<PlacedDisc> ends(double yMm) {
        double half = width.minus(height).mm() / 2;
        return List.of(new PlacedDisc(-half, yMm, height), new PlacedDisc(half, yMm, height));
    }
}
