/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.order;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Tries of one option that works with some chance, and if it works succeeds in each try with another. Two models say what
 * a failed try tells of the rest.
 * <p>
 * Where options are independent, the chance of a further try falls as in {@link #chanceAfterFailures}, and the orders of
 * this package use that. Where just one of several causes is the true one, as in the theory of search, a failure makes
 * all other causes likelier in the same proportion; then the shares {@link #share} are compared as they stand
 * (J. B. Kadane, J. Am. Stat. Assoc. 1968;63:157 and Oper. Res. 1971;19:557; L. D. Stone, Theory of Optimal Search, 1975;
 * from memory).
 *
 * @param works chance that the option works at all; 0 to 1
 * @param succeeds chance that a try succeeds if the option works; 0 to 1
 * @param cost of a try; more than 0
 */
public record RepeatedTries(double works, double succeeds, double cost) {

    /** @throws OrderException naming the values that are out of range */
    public RepeatedTries {
        if (!(works >= 0 && works <= 1 && succeeds >= 0 && succeeds <= 1)) {
            throw new OrderException("chances must lie between 0 and 1, not be " + works + " and " + succeeds);
        }
        Checks.cost("a try", cost);
        if (cost == 0) {
            throw new OrderException("a try that costs nothing has no index");
        }
    }

    /** Returns the chance, before any try, that it is the k-th try that succeeds; k from 1. */
    public double share(int k) {
        return works * succeeds * Math.pow(1 - succeeds, k - 1.0);
    }

    /** Returns the chance that the k-th try succeeds once all before have failed; k from 1. */
    public double chanceAfterFailures(int k) {
        double failedBefore = 1 - works * (1 - Math.pow(1 - succeeds, k - 1.0));
        return failedBefore == 0 ? 0 : share(k) / failedBefore;
    }

    /** Returns chance per cost of the k-th try among causes that exclude each other; the largest comes first. */
    public double exclusiveIndex(int k) {
        return share(k) / cost;
    }

    /** Returns chance per cost of the k-th try among independent options; the largest comes first. */
    public double independentIndex(int k) {
        return chanceAfterFailures(k) / cost;
    }

    /** Returns so many tries with their chances among independent options. */
    public List<Try> tries(int number) {
        return IntStream.rangeClosed(1, number).mapToObj(k -> new Try(cost, chanceAfterFailures(k))).toList();
    }
}
