/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.order;

/**
 * One try of an option.
 *
 * @param cost what the try costs, in the unit of the objective; 0 or more
 * @param chance that it succeeds, given that all earlier tries of the same option failed; 0 to 1
 */
public record Try(double cost, double chance) {

    /** @throws OrderException naming the values that are out of range */
    public Try {
        Checks.cost("a try", cost);
        if (!(chance >= 0 && chance <= 1)) {
            throw new OrderException("a chance must lie between 0 and 1, not " + chance);
        }
    }

    /** Returns cost per chance, the index of the try; infinite where the chance is 0. */
    public double index() {
        return chance == 0 ? Double.POSITIVE_INFINITY : cost / chance;
    }
}
