/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.opinion;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * How wide a circle round discs side by side must be, by laying them along its rim one after the other, each as far from
 * all before it as both their diameters ask for, and widening the circle until they close up. Up to three discs that is
 * the smallest circle; beyond, it is wide enough, and that of the three largest is too narrow or just enough.
 */
final class Ring {
    /** Of the circle; of one of 10 mm a thousandth of a nanometre. */
    private static final double FINE_ENOUGH = 1e-10;
    private static final int MOST = 6;
    private static final int EXACT = 3;
    private static final double FULL_TURN = 2 * Math.PI;

    private Ring() {
    }

    /** A diameter that is surely needed. */
    static double atLeast(List<Double> discs) {
        return around(falling(discs).stream().limit(EXACT).toList(), 0);
    }

    /** A diameter that is surely enough: the two smallest count as one disc as long as there are too many orders. */
    static double enough(List<Double> discs) {
        return enough(discs, 0);
    }

    /**
     * The same, where nobody asks for a narrower circle than one.
     *
     * @param wide is returned if it is enough
     */
    static double enough(List<Double> discs, double wide) {
        List<Double> left = new ArrayList<>(falling(discs));
        while (left.size() > MOST) {
            double two = left.remove(left.size() - 1) + left.remove(left.size() - 1);
            left.add(two);
            left.sort(Comparator.reverseOrder());
        }
        return around(left, wide);
    }

    private static List<Double> falling(List<Double> discs) {
        return discs.stream().sorted(Comparator.reverseOrder()).toList();
    }

    private static double around(List<Double> falling, double wide) {
        double[] discs = falling.stream().mapToDouble(d -> d).toArray();
        double inLine = DoubleStream.of(discs).sum();
        return discs.length < EXACT ? inLine : least(discs, 1, Math.max(wide, discs[0] + discs[1]), inLine);
    }

    /**
     * The narrowest circle of all orders that begin with the first discs as they stand, or one that is known already.
     *
     * @param order is in the same order again afterwards
     * @param begun how many discs have their place
     * @param floor nobody asks for less
     */
    private static double least(double[] order, int begun, double floor, double known) {
        if (begun == order.length) {
            return closing(order, floor, known);
        }
        double least = known;
        for (int next = begun; next < order.length && least > floor; next++) {
            swap(order, begun, next);
            least = least(order, begun + 1, floor, least);
            swap(order, begun, next);
        }
        return least;
    }

    private static void swap(double[] order, int one, int other) {
        double disc = order[one];
        order[one] = order[other];
        order[other] = disc;
    }

    private static double closing(double[] order, double floor, double known) {
        if (closes(order, floor)) {
            return floor;
        }
        double low = floor;
        double high = known;
        double open = closes(order, known) ? FINE_ENOUGH * known : high;
        while (high - low > open) {
            double middle = (low + high) / 2;
            if (closes(order, middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    private static boolean closes(double[] order, double diameter) {
        double[] at = new double[order.length];
        double[] left = new double[order.length];
        Arrays.fill(left, FULL_TURN);
        for (int i = 1; i < at.length; i++) {
            for (int before = 0; before < i; before++) {
                double apart = apart(order[before], order[i], diameter);
                at[i] = Math.max(at[i], at[before] + apart);
                left[i] = Math.min(left[i], FULL_TURN + at[before] - apart);
            }
            if (at[i] > left[i]) {
                return false;
            }
        }
        return true;
    }

    /** The angle between the centres of two discs that touch each other and the rim, in radians. */
    private static double apart(double a, double b, double diameter) {
        double first = (diameter - a) / 2;
        double second = (diameter - b) / 2;
        double between = (a + b) / 2;
        double cosine = (first * first + second * second - between * between) / (2 * first * second);
        return first <= 0 || second <= 0 ? 0 : Math.acos(Math.max(-1, Math.min(1, cosine)));
    }
}
