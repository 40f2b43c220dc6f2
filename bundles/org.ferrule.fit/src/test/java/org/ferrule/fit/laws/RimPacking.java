/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.laws;

import java.util.ArrayList;
import java.util.List;

/**
 * The circle round discs side by side, worked out without the kernel: the discs lie on the rim in some order, each as
 * far from the next as both their diameters ask for, and the circle grows until they close up. Round up to three discs
 * that is the smallest one; round more it is large enough, while that round any three of them is too small.
 */
final class RimPacking {
    private static final int STEPS = 50;

    private RimPacking() {
    }

    /** A diameter that is surely needed. */
    static double atLeast(List<Double> discs) {
        if (discs.size() <= 3) {
            return enough(discs);
        }
        double most = 0;
        for (int left = 0; left < discs.size(); left++) {
            List<Double> others = new ArrayList<>(discs);
            others.remove(left);
            most = Math.max(most, atLeast(others));
        }
        return most;
    }

    /** A diameter that is surely enough. */
    static double enough(List<Double> discs) {
        if (discs.isEmpty()) {
            return 0;
        }
        double least = Double.POSITIVE_INFINITY;
        for (List<Double> order : orders(discs.subList(1, discs.size()))) {
            List<Double> ring = new ArrayList<>(order);
            ring.add(discs.get(0));
            least = Math.min(least, ofRing(ring));
        }
        return least;
    }

    private static List<List<Double>> orders(List<Double> discs) {
        List<List<Double>> orders = new ArrayList<>();
        if (discs.isEmpty()) {
            orders.add(List.of());
        }
        for (int first = 0; first < discs.size(); first++) {
            List<Double> others = new ArrayList<>(discs);
            double head = others.remove(first);
            for (List<Double> rest : orders(others)) {
                List<Double> order = new ArrayList<>(rest);
                order.add(head);
                orders.add(order);
            }
        }
        return orders;
    }

    /** Bisects between the two largest side by side and all in one line. */
    private static double ofRing(List<Double> ring) {
        List<Double> falling = ring.stream().sorted((a, b) -> Double.compare(b, a)).toList();
        double low = falling.get(0) + (ring.size() > 1 ? falling.get(1) : 0);
        double high = ring.stream().mapToDouble(d -> d).sum();
        if (ring.size() <= 2 || closes(ring, low)) {
            return low;
        }
        for (int i = 0; i < STEPS; i++) {
            double middle = (low + high) / 2;
            if (closes(ring, middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    /** Whether all lie on the rim of a circle of that diameter without overlap, neighbours or not. */
    private static boolean closes(List<Double> ring, double diameter) {
        double[] at = new double[ring.size()];
        for (int i = 1; i < at.length; i++) {
            for (int before = 0; before < i; before++) {
                at[i] = Math.max(at[i], at[before] + angle(ring.get(before), ring.get(i), diameter));
            }
        }
        for (int i = 1; i < at.length; i++) {
            for (int before = 0; before < i; before++) {
                if (at[i] - at[before] + angle(ring.get(before), ring.get(i), diameter) > 2 * Math.PI + 1e-12) {
                    return false;
                }
            }
        }
        return true;
    }

    /** The angle between the centres of two discs that touch each other and the rim. */
    private static double angle(double a, double b, double diameter) {
        double p = (diameter - a) / 2;
        double q = (diameter - b) / 2;
        double apart = (a + b) / 2;
        if (p <= 0 || q <= 0) {
            return 0;
        }
        return Math.acos(Math.max(-1, Math.min(1, (p * p + q * q - apart * apart) / (2 * p * q))));
    }
}
