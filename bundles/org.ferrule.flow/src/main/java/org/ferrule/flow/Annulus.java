/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.flow;

/**
 * Flow in a lumen with one round device, as share of the empty lumen's flow. Exact for fully developed laminar flow of a
 * Newtonian fluid.
 * <p>
 * A ratio is the device's diameter divided by the lumen's, from 0 (no device: 1 is left) to 1 (no room: 0 is left). An
 * eccentricity is the distance of the centres divided by the difference of the radii, from 0 (centred) to 1 (the device
 * lies on the wall).
 * <p>
 * Rounding: {@link #concentric} and wall contact are good to twelve digits at every ratio. Between them two nearly equal
 * numbers are subtracted, and the relative error is about 1e-15 / (1 - ratio)^3: nothing at 0.9, 1e-6 at 0.999.
 */
public final class Annulus {
    /** From here on the tail of the sum over images is replaced by the Euler-Maclaurin formula. */
    private static final int IMAGES = 60;
    /** From here on four terms of the asymptotic series of psi' are enough. */
    private static final int FAR = 20;

    private Annulus() {
    }

    /**
     * Returns the share with the device in the centre: 1 - k^4 - (1 - k^2)^2 / ln(1/k). Source of the formula, from
     * memory: Bird, Stewart and Lightfoot, Transport Phenomena.
     *
     * @throws IllegalArgumentException if the ratio is not within 0 to 1
     */
    public static double concentric(double ratio) {
        checkShare("ratio", ratio);
        if (ratio == 0 || ratio == 1) {
            return 1 - ratio;
        }
        // The same with x = ln(1/k), as a sum of positive terms: in a thin gap nothing cancels.
        double x = -Math.log(ratio);
        return x > 1 ? direct(ratio, x) : 4 * Math.exp(-2 * x) * Math.sinh(x) * coshLessSinhOver(x);
    }

    private static double direct(double k, double x) {
        return 1 - Math.pow(k, 4) - Math.pow(1 - k * k, 2) / x;
    }

    /** Returns cosh x - sinh x / x for x up to 1. */
    private static double coshLessSinhOver(double x) {
        double term = 1;
        double sum = 0;
        for (int n = 2; n <= 20; n += 2) {
            term *= x * x / (n * (n + 1));
            sum += n * term;
        }
        return sum;
    }

    /**
     * Returns the share with the device beside the centre. The series is that of Piercy, Hooper and Winny, Phil Mag 1933
     * (as given, from memory, by White, Viscous Fluid Flow), summed over images of the device instead of harmonics, so
     * that it converges up to wall contact; its limit there is 1 - k^4 - 4 k^2 psi'(1 / (1 - k)).
     *
     * @throws IllegalArgumentException if the ratio or the eccentricity is not within 0 to 1
     */
    public static double eccentric(double ratio, double eccentricity) {
        checkShare("eccentricity", eccentricity);
        double centred = concentric(ratio);
        if (eccentricity == 0 || ratio == 0 || ratio == 1) {
            return centred;
        }
        double onWall = onWall(ratio);
        return eccentricity == 1 ? onWall : Math.max(centred, Math.min(onWall, between(ratio, eccentricity)));
    }

    private static void checkShare(String name, double value) {
        if (!(value >= 0 && value <= 1)) {
            throw new IllegalArgumentException(name + " must be within 0 to 1: " + value);
        }
    }

    /** Sums 1 / sinh^2 over the images of the device in bipolar coordinates, where the circles are lines. */
    private static double between(double k, double eccentricity) {
        double c = eccentricity * (1 - k);
        double square = (1 - k) * (1 - eccentricity) * (1 - c + k) * (1 + c - k) * (1 + c + k) / 4;
        double focus = Math.sqrt(square) / c;
        double place = asinh(focus / k);
        double width = place - asinh(focus);
        double sum = 0;
        for (int i = 0; i < IMAGES; i++) {
            sum += Math.pow(Math.sinh(place + i * width), -2);
        }
        return 1 - Math.pow(k, 4) - 4 * square * (sum + tail(place + IMAGES * width, width));
    }

    private static double asinh(double x) {
        return Math.log1p(x + x / (1 / x + Math.sqrt(1 / (x * x) + 1)));
    }

    /** Returns the sum of 1 / sinh^2 from y onwards, and 1 / step. */
    private static double tail(double y, double step) {
        double coth = 1 / Math.tanh(y);
        double square = Math.pow(Math.sinh(y), -2);
        double third = step * step * step * coth * square * (24 * coth * coth - 16) / 720;
        return coth / step + square / 2 + step * coth * square / 6 - third;
    }

    /** With 1/x = e = 1 - k: what is left of 1 - k^4 and of the first terms of psi' has a closed form. */
    private static double onWall(double k) {
        double e = 1 - k;
        double leading = e * e * e * (10 - e * (5 + 2 * e)) / 3;
        return leading - 4 * k * k * trigammaRest(1 / e);
    }

    /** Returns psi'(x) - 1/x - 1/(2 x^2) - 1/(6 x^3) for x of 1 or more. */
    private static double trigammaRest(double x) {
        if (x < FAR) {
            return trigammaRest(x + 1) + 1 / (x * x) + head(x + 1) - head(x);
        }
        double square = 1 / (x * x);
        return -square * square / x * (1 / 30. - square * (1 / 42. - square * (1 / 30. - square * 5 / 66)));
    }

    private static double head(double x) {
        return (1 + (0.5 + 1 / (6 * x)) / x) / x;
    }
}
