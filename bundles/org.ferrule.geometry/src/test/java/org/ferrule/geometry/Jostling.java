/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

import java.util.List;
import java.util.Random;
import org.ferrule.quantity.Length;

/**
 * A slow second opinion on free discs that shares nothing with the solver: discs are thrown into a circle and push each
 * other aside, pair by pair, until none overlaps; then the circle shrinks a little, as long as that works.
 */
final class Jostling {
    private static final int SWEEPS = 300;
    private static final double LEAST_SHRINKING = 1e-5;

    private final double[] radius;
    private final double[] x;
    private final double[] y;
    private final Random random;

    private Jostling(List<Length> diameters, Random random) {
        radius = diameters.stream().mapToDouble(diameter -> diameter.mm() / 2).toArray();
        x = new double[radius.length];
        y = new double[radius.length];
        this.random = random;
    }

    /** Returns the diameter in mm of the smallest circle found, in which nothing overlaps. */
    static double diameter(List<Length> diameters, Random random, int tries) {
        Jostling jostling = new Jostling(diameters, random);
        double best = diameters.stream().mapToDouble(Length::mm).sum() / 2;
        for (int i = 0; i < tries; i++) {
            best = Math.min(best, jostling.attempt(best));
        }
        return 2 * best;
    }

    private double attempt(double best) {
        double start = best * (0.9 + 0.1 * random.nextDouble());
        for (int i = 0; i < x.length; i++) {
            double angle = 2 * Math.PI * random.nextDouble();
            double distance = Math.max(0, start - radius[i]) * Math.sqrt(random.nextDouble());
            x[i] = distance * Math.cos(angle);
            y[i] = distance * Math.sin(angle);
        }
        double found = best;
        double circle = start;
        double part = 0.02;
        while (part > LEAST_SHRINKING) {
            double needed = settle(circle);
            if (needed < found) {
                found = needed;
            } else {
                part /= 2;
            }
            circle = found * (1 - part);
        }
        return found;
    }

    /** Returns the radius that the discs need, spread so that none overlaps, after they have pushed each other. */
    private double settle(double circle) {
        for (int sweep = 0; sweep < SWEEPS; sweep++) {
            double most = 0;
            for (int i = 0; i < x.length; i++) {
                for (int j = 0; j < i; j++) {
                    most = Math.max(most, part(i, j));
                }
                most = Math.max(most, pullIn(i, circle));
            }
            if (most < 1e-9) {
                break;
            }
        }
        return spread();
    }

    private double part(int i, int j) {
        double dx = x[i] - x[j];
        double dy = y[i] - y[j];
        double distance = Math.max(1e-9, Math.sqrt(dx * dx + dy * dy));
        double overlap = radius[i] + radius[j] - distance;
        if (overlap > 0) {
            double share = radius[j] / (radius[i] + radius[j]);
            x[i] += dx / distance * overlap * share;
            y[i] += dy / distance * overlap * share;
            x[j] -= dx / distance * overlap * (1 - share);
            y[j] -= dy / distance * overlap * (1 - share);
        }
        return overlap;
    }

    private double pullIn(int i, double circle) {
        double distance = Math.hypot(x[i], y[i]);
        double overlap = distance + radius[i] - circle;
        if (overlap > 0 && distance > 0) {
            x[i] *= (distance - overlap) / distance;
            y[i] *= (distance - overlap) / distance;
        }
        return overlap;
    }

    private double spread() {
        double factor = 1;
        double reach = 0;
        for (int i = 0; i < x.length; i++) {
            for (int j = 0; j < i; j++) {
                factor = Math.max(factor, (radius[i] + radius[j]) / Math.hypot(x[i] - x[j], y[i] - y[j]));
            }
        }
        for (int i = 0; i < x.length; i++) {
            reach = Math.max(reach, factor * Math.hypot(x[i], y[i]) + radius[i]);
        }
        return reach;
    }
}
