/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.purchase;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;

/** What a unit of each offer counts for: one, or its price as a whole number of the largest amount that fits all. */
final class Weights {
    private final Goal goal;
    private final int scale;
    private final BigInteger divisor;

    private Weights(Goal goal, int scale, BigInteger divisor) {
        this.goal = goal;
        this.scale = scale;
        this.divisor = divisor;
    }

    static Weights of(PurchaseProblem problem) {
        List<BigDecimal> prices = problem.offers().stream().flatMap(offer -> offer.price().stream()).toList();
        int scale = prices.stream().mapToInt(BigDecimal::scale).max().orElse(0);
        BigInteger divisor = prices.stream().map(price -> price.setScale(scale).unscaledValue())
                .reduce(BigInteger.ZERO, BigInteger::gcd).max(BigInteger.ONE);
        return new Weights(problem.goal(), scale, divisor);
    }

    /** Returns the weight of a unit; of a price that is too long for the solver, an exception that names it. */
    long of(Offer offer) {
        if (goal == Goal.SMALLEST) {
            return 1;
        }
        BigInteger weight = offer.price().orElseThrow().setScale(scale).unscaledValue().divide(divisor);
        if (weight.bitLength() >= 40) {
            throw new IllegalArgumentException("price " + offer.price().get() + " of item \"" + offer.item()
                    + "\" is too large or too finely divided beside the others");
        }
        return weight.longValue();
    }
}
