/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.opinion;

/**
 * A bent lumen, and how much room a cylinder has in it: points of the cylinder's rims, at its middle and at its ends, are
 * compared with the wall, and the cylinder is moved towards the place that suits it best. The distances are unimodal
 * along that way, so halving by the golden section finds it. One unit of length for all.
 *
 * @param diameter of the lumen
 * @param radius of the bend, to the centre line
 */
record Torus(double diameter, double radius) {
    private static final int ANGLES = 16;
    private static final int STEPS = 60;
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    /** The least distance of the cylinder from the wall where it lies best; negative where it does not find room. */
    double room(double cylinder, double length) {
        double low = radius - diameter / 2;
        double high = radius + diameter / 2;
        for (int i = 0; i < STEPS; i++) {
            double first = high - GOLDEN * (high - low);
            double second = low + GOLDEN * (high - low);
            if (room(cylinder, length, first) < room(cylinder, length, second)) {
                low = first;
            } else {
                high = second;
            }
        }
        return room(cylinder, length, (low + high) / 2);
    }

    /** With the middle of the cylinder that far from the centre of the bend. */
    private double room(double cylinder, double length, double place) {
        double farthest = 0;
        for (int i = 0; i <= ANGLES; i++) {
            double angle = Math.PI * i / ANGLES;
            double across = place + cylinder / 2 * Math.cos(angle);
            double above = cylinder / 2 * Math.sin(angle);
            farthest = Math.max(farthest, Math.hypot(across - radius, above));
            farthest = Math.max(farthest, Math.hypot(Math.hypot(across, length / 2) - radius, above));
        }
        return diameter / 2 - farthest;
    }
}
