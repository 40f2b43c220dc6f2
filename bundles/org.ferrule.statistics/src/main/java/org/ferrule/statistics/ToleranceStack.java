/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.statistics;

import java.math.BigInteger;
import java.util.List;
import java.util.function.Function;

import org.ferrule.quantity.Length;

/**
 * What is left of a chain of dimensions: a gap, a clearance, an overlap. Nominal and worst case are exact sums; the
 * root sum square assumes independent parts, centred in their tolerances (Chase, "Basic tools for tolerance analysis of
 * mechanical assemblies"; Scholz, "Tolerance Stack Analysis Methods", 1995), and is rounded outward at a third of a
 * nanometre.
 */
public final class ToleranceStack {
    private final List<Contributor> contributors;

    /**
     * A dimension of the chain. Its limits may lie on one side of the nominal length, as those of fits do (ISO 286-1).
     *
     * @param nominal the nominal length
     * @param low the lower limit
     * @param high the upper limit
     * @param adds whether it makes the gap larger; else it makes it smaller
     */
    public record Contributor(Length nominal, Length low, Length high, boolean adds) {

        /**
         * Checks the limits.
         *
         * @throws IllegalArgumentException naming them if the lower exceeds the upper
         */
        public Contributor {
            checkOrder(low, high);
        }

        /** Returns what it adds to the gap at least. */
        Length least() {
            return adds ? low : high.negated();
        }

        /** Returns what it adds to the gap at most. */
        Length most() {
            return adds ? high : low.negated();
        }

        /** Returns the gap's nominal share. */
        Length signed() {
            return adds ? nominal : nominal.negated();
        }
    }

    /**
     * From where to where the gap may lie.
     *
     * @param low the lower end
     * @param high the upper end
     */
    public record Range(Length low, Length high) {

        /**
         * Checks the order.
         *
         * @throws IllegalArgumentException if the lower end exceeds the upper one
         */
        public Range {
            checkOrder(low, high);
        }
    }

    /**
     * Creates a stack.
     *
     * @throws IllegalArgumentException if there is no contributor
     */
    public ToleranceStack(List<Contributor> contributors) {
        if (contributors.isEmpty()) {
            throw new IllegalArgumentException("a stack needs at least one contributor");
        }
        this.contributors = List.copyOf(contributors);
    }

    /** Returns the gap of all nominal lengths. */
    public Length nominal() {
        return sum(Contributor::signed);
    }

    /** Returns the gap when every part lies at its worst end. */
    public Range worstCase() {
        return new Range(sum(Contributor::least), sum(Contributor::most));
    }

    /** Returns the root sum square range, about the middle of the worst case. */
    public Range rootSumSquare() {
        Range worst = worstCase();
        BigInteger squares = contributors.stream().map(part -> width(part).multiply(width(part))).reduce(
                BigInteger.ZERO,
                BigInteger::add);
        BigInteger[] root = squares.sqrtAndRemainder();
        BigInteger width = root[1].signum() == 0 ? root[0] : root[0].add(BigInteger.ONE);
        // Both ends are half of a whole number; where that is odd, each is rounded outward.
        long twiceMiddle = worst.low().plus(worst.high()).thirdNanometres();
        return new Range(new Length(Math.floorDiv(Math.subtractExact(twiceMiddle, width.longValueExact()), 2)),
                new Length(-Math.floorDiv(-Math.addExact(twiceMiddle, width.longValueExact()), 2)));
    }

    private static BigInteger width(Contributor part) {
        return BigInteger.valueOf(part.high().minus(part.low()).thirdNanometres());
    }

    private static void checkOrder(Length low, Length high) {
        if (low.compareTo(high) > 0) {
            throw new IllegalArgumentException("limits reversed: " + low + " > " + high);
        }
    }

    private Length sum(Function<Contributor, Length> share) {
        return contributors.stream().map(share).reduce(Length.ZERO, Length::plus);
    }
}
