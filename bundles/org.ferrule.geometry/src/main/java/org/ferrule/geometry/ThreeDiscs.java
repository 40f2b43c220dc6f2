/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

import java.math.BigInteger;
import java.util.List;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;

/**
 * The smallest circle round three free discs of diameters a &gt;= b &gt;= c. While c is at most
 * ab(a+b)/(a^2+ab+b^2) it hides beside the other two and the diameter is a+b. A larger c touches both and the circle,
 * which then is the {@link SoddyCircle}. That textbook circle is not the answer for a small c: for radii of 1, 2 and 3
 * it gives 6, where 5 is enough.
 */
record ThreeDiscs(Length a, Length b, Length c) {

    Enclosure enclosure() {
        if (smallestHides()) {
            Length sum = a.plus(b);
            return new Enclosure(sum, sum, place(new double[] { b.mm() / 2, 0 }));
        }
        SoddyCircle circle = new SoddyCircle(whole(a), whole(b), whole(c));
        Bounds diameter = bounds(circle);
        double radius = circle.estimate() / 2 / LengthUnit.MILLIMETRE.thirdNanometres();
        double[] centre = apex(a.plus(b).mm() / 2, radius - a.mm() / 2, radius - b.mm() / 2);
        return Certificate.strengthen(new Enclosure(diameter.lower(), diameter.upper(), place(centre)));
    }

    private boolean smallestHides() {
        BigInteger x = whole(a);
        BigInteger y = whole(b);
        BigInteger squares = x.multiply(x).add(x.multiply(y)).add(y.multiply(y));
        return whole(c).multiply(squares).compareTo(x.multiply(y).multiply(x.add(y))) <= 0;
    }

    private static Bounds bounds(SoddyCircle circle) {
        long above = (long) Math.ceil(circle.estimate());
        // The estimate is right but for rounding, so this takes a step or two.
        while (circle.compare(above) < 0) {
            above++;
        }
        while (circle.compare(above - 1) >= 0) {
            above--;
        }
        return new Bounds(new Length(circle.compare(above) == 0 ? above : above - 1), new Length(above));
    }

    private static BigInteger whole(Length length) {
        return BigInteger.valueOf(length.thirdNanometres());
    }

    /** Places the three in touch with each other, the first two on a line to the right, round a centre seen from it. */
    private List<PlacedDisc> place(double[] centre) {
        double side = a.plus(b).mm() / 2;
        double[] third = third();
        return List.of(new PlacedDisc(-centre[0], -centre[1], a), new PlacedDisc(side - centre[0], -centre[1], b),
                new PlacedDisc(third[0] - centre[0], third[1] - centre[1], c));
    }

    /**
     * Returns where the third touches both others, seen from the first. Heron's formula for the triangle of their centres:
     * nothing cancels, however small the third and the second are.
     */
    private double[] third() {
        double side = a.plus(b).mm();
        if (side == 0) {
            return new double[] { 0, 0 };
        }
        double product = a.mm() * b.mm() * c.mm() * a.plus(b).plus(c).mm();
        return new double[] { a.mm() / 2 + c.mm() * a.minus(b).mm() / (2 * side), Math.sqrt(product) / side };
    }

    /** Returns the point at given distances from (0, 0) and (side, 0), on the upper side. */
    private static double[] apex(double side, double fromFirst, double fromSecond) {
        if (side == 0) {
            return new double[] { 0, 0 };
        }
        double x = (fromFirst * fromFirst - fromSecond * fromSecond + side * side) / (2 * side);
        // Slightly negative by rounding where the three points lie on a line.
        double squared = Math.max(0, fromFirst * fromFirst - x * x);
        return new double[] { x, Math.sqrt(squared) };
    }
}
