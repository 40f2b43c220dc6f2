/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.opinion;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * How wide a circle round discs side by side must be, by laying them along its rim one after the other, each as far from
 * all before it as both their diameters ask for, and widening the circle until they close up. Up to three discs that is
 * the smallest circle; beyond, it is wide enough, and that of the three largest is too narrow or just enough.
 */
final class Ring {
    private static final int HALVINGS = 48;
    private static final int MOST = 6;
    private static final int EXACT = 3;
    private static final double FULL_TURN = 2 * Math.PI;

    private Ring() {
    }

    /** A diameter that is surely needed. */
    static double atLeast(List<Double> discs) {
        return around(falling(discs).stream().limit(EXACT).toList());
    }

    /** A diameter that is surely enough: the two smallest count as one disc as long as there are too many orders. */
    static double enough(List<Double> discs) {
        List<Double> left = new ArrayList<>(falling(discs));
        while (left.size() > MOST) {
            double two = left.remove(left.size() - 1) + left.remove(left.size() - 1);
            left.add(two);
            left.sort(Comparator.reverseOrder());
        }
        return around(left);
    }

    private static List<Double> falling(List<Double> discs) {
        return discs.stream().sorted(Comparator.reverseOrder()).toList();
    }

    private static double around(List<Double> falling) {
        double inLine = falling.stream().mapToDouble(d -> d).sum();
        return falling.size() < EXACT ? inLine
                : least(List.of(falling.get(0)), falling.subList(1, falling.size()), inLine);
    }

    /** The narrowest circle of all orders that begin as given, or the one that is known already. */
    private static double least(List<Double> begun, List<Double> left, double known) {
        if (left.isEmpty()) {
            return closing(begun, known);
        }
        double least = known;
        for (int next = 0; next < left.size(); next++) {
            List<Double> order = new ArrayList<>(begun);
            List<Double> others = new ArrayList<>(left);
            order.add(others.remove(next));
            least = least(order, others, least);
        }
        return least;
    }

    private static double closing(List<Double> order, double known) {
        if (!closes(order, known)) {
            return known;
        }
        List<Double> falling = falling(order);
        double low = falling.get(0) + falling.get(1);
        double high = known;
        for (int i = 0; i < HALVINGS && low < high; i++) {
            double middle = (low + high) / 2;
            if (closes(order, middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return closes(order, low) ? low : high;
    }

    private static boolean closes(List<Double> order, double diameter) {
        double[] at = new double[order.size()];
        for (int i = 1; i < at.length; i++) {
            for (int before = 0; before < i; before++) {
                at[i] = Math.max(at[i], at[before] + apart(order.get(before), order.get(i), diameter));
            }
        }
        for (int i = 1; i < at.length; i++) {
            for (int before = 0; before < i; before++) {
                if (at[i] - at[before] + apart(order.get(before), order.get(i), diameter) > FULL_TURN) {
                    return false;
                }
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
