/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

import java.math.BigInteger;

/**
 * The circle that three discs touch from inside while they touch each other, by Descartes' theorem. With the product
 * p = abc of the diameters, the sum of their pairs q = ab+bc+ca and r = 4p(a+b+c), the diameter of the circle is
 *
 * <pre>
 * D = p / (sqrt(r) - q) = (pq + p sqrt(r)) / (r - q^2)
 * </pre>
 *
 * Whole numbers are compared with it exactly.
 */
final class SoddyCircle {
    private final double estimate;
    private final BigInteger productTimesPairs;
    private final BigInteger squaredRoot;
    private final BigInteger denominator;

    /** Prepares the comparison for three diameters, of which the smallest is too large to hide beside the others. */
    SoddyCircle(BigInteger a, BigInteger b, BigInteger c) {
        BigInteger product = a.multiply(b).multiply(c);
        BigInteger pairs = a.multiply(b).add(b.multiply(c)).add(c.multiply(a));
        BigInteger fourfold = product.multiply(a.add(b).add(c)).shiftLeft(2);
        estimate = product.doubleValue() / (Math.sqrt(fourfold.doubleValue()) - pairs.doubleValue());
        productTimesPairs = product.multiply(pairs);
        squaredRoot = fourfold.multiply(product).multiply(product);
        denominator = fourfold.subtract(pairs.multiply(pairs));
    }

    /** Returns the diameter, rounded as doubles are. */
    double estimate() {
        return estimate;
    }

    /** Compares a whole number with the exact diameter; negative if the number is smaller, zero if equal. */
    int compare(long number) {
        BigInteger root = BigInteger.valueOf(number).multiply(denominator).subtract(productTimesPairs);
        return root.signum() < 0 ? -1 : root.multiply(root).compareTo(squaredRoot);
    }
}
