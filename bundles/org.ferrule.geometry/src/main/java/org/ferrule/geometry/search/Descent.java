/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry.search;

import java.util.Arrays;

/**
 * Goes downhill to a minimum of an energy, by the method of Broyden, Fletcher, Goldfarb and Shanno (quasi-Newton), with
 * a dense matrix, for there are at most a few dozen variables.
 */
final class Descent {
    private static final double LONGEST_STEP = 0.5;
    private static final double ENOUGH = 1e-4;
    private static final double LEAST_CURVATURE = 1e-6;
    private static final int MOST_TRIALS = 8;

    private final Energy energy;
    private final int size;
    private final double[] inverse;
    private final double[] trial;
    private final double[] step;
    private final double[] change;
    private final double[] product;
    private double[] gradient;
    private double[] trialGradient;
    private double height;
    private double trialHeight;

    Descent(Energy energy, int variables) {
        this.energy = energy;
        size = variables;
        inverse = new double[variables * variables];
        trial = new double[variables];
        step = new double[variables];
        change = new double[variables];
        product = new double[variables];
        gradient = new double[variables];
        trialGradient = new double[variables];
    }

    /** Forgets what is known of the curvature. */
    void forget() {
        Arrays.fill(inverse, 0);
        for (int i = 0; i < size; i++) {
            inverse[i * (size + 1)] = 0.5;
        }
    }

    /** Moves the variables downhill, at most so many steps or until the slope is almost level. */
    void descend(double[] variables, int mostSteps, double level) {
        height = energy.at(variables, gradient);
        boolean fresh = false;
        for (int i = 0; i < mostSteps && steepness() > level; i++) {
            if (advance(variables)) {
                fresh = false;
            } else if (fresh) {
                return;
            } else {
                forget();
                fresh = true;
            }
        }
    }

    private double steepness() {
        double most = 0;
        for (double slope : gradient) {
            most = Math.max(most, Math.abs(slope));
        }
        return most;
    }

    private boolean advance(double[] variables) {
        times(gradient, step);
        double slope = dot(step, gradient);
        if (!search(variables, slope)) {
            return false;
        }
        for (int i = 0; i < size; i++) {
            step[i] = trial[i] - variables[i];
            change[i] = trialGradient[i] - gradient[i];
            variables[i] = trial[i];
        }
        height = trialHeight;
        double[] old = gradient;
        gradient = trialGradient;
        trialGradient = old;
        learn();
        return true;
    }

    /** Looks along the step, downhill, for a place that is lower in proportion to the slope. */
    private boolean search(double[] variables, double slope) {
        double longest = 0;
        for (double part : step) {
            longest = Math.max(longest, Math.abs(part));
        }
        double factor = longest > LONGEST_STEP ? LONGEST_STEP / longest : 1;
        for (int i = 0; i < MOST_TRIALS; i++) {
            for (int k = 0; k < size; k++) {
                trial[k] = variables[k] - factor * step[k];
            }
            trialHeight = energy.at(trial, trialGradient);
            if (trialHeight <= height - ENOUGH * factor * slope) {
                return slope > 0;
            }
            double bend = 2 * (trialHeight - height + factor * slope);
            factor *= Math.max(0.1, Math.min(0.5, factor * slope / bend));
        }
        return false;
    }

    private void learn() {
        double curvature = dot(change, step);
        if (curvature <= LEAST_CURVATURE * Math.sqrt(dot(step, step) * dot(change, change))) {
            return;
        }
        times(change, product);
        double scale = (1 + dot(change, product) / curvature) / curvature;
        for (int i = 0; i < size; i++) {
            double along = step[i] * scale - product[i] / curvature;
            double across = -step[i] / curvature;
            int row = i * size;
            for (int k = 0; k < size; k++) {
                inverse[row + k] += along * step[k] + across * product[k];
            }
        }
    }

    private void times(double[] vector, double[] result) {
        for (int i = 0; i < size; i++) {
            double sum = 0;
            int row = i * size;
            for (int k = 0; k < size; k++) {
                sum += inverse[row + k] * vector[k];
            }
            result[i] = sum;
        }
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
