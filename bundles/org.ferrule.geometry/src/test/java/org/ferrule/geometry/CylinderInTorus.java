/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

import java.util.Random;

/**
 * A slow second opinion on a rigid cylinder in a bent lumen: points of the cylinder's surface, each asked whether it
 * lies in the torus round the z axis. Knows nothing of the closed form. Lengths in mm.
 */
final class CylinderInTorus {
    private static final int HALVINGS = 40;
    private static final int ROUND = 24;
    private static final int ALONG = 12;
    private static final int TRIES = 25;
    /** Rounding of the points, as part of the radius of the bend. */
    private static final double TOUCH = 1e-12;

    private final double tubeRadius;
    private final double bendRadius;
    private final double radius;

    CylinderInTorus(double lumenMm, double bendRadiusMm, double deviceMm) {
        tubeRadius = lumenMm / 2;
        bendRadius = bendRadiusMm;
        radius = deviceMm / 2;
    }

    /** Returns the longest cylinder that lies in the torus while it touches the inner side halfway along. */
    double longestMm() {
        Place touching = new Place(bendRadius - tubeRadius + radius, 0, 0, 0, 0);
        double fits = 0;
        double stops = 4 * bendRadius;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (fits + stops) / 2;
            if (holds(middle, touching)) {
                fits = middle;
            } else {
                stops = middle;
            }
        }
        return fits;
    }

    /** Tells whether a cylinder of that length lies in the torus in any of some places, drawn about the best one. */
    boolean holdsAnywhere(double lengthMm, long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < TRIES; i++) {
            double size = Math.pow(10, -6 * random.nextDouble());
            Place place = new Place(bendRadius - tubeRadius + radius + size * tubeRadius * random.nextGaussian(),
                    size * tubeRadius * random.nextGaussian(), size * lengthMm * random.nextGaussian(),
                    size * random.nextGaussian(), size * random.nextGaussian());
            if (holds(lengthMm, place)) {
                return true;
            }
        }
        return false;
    }

    /** Where the middle of the axis lies, shifted along itself, and how far it is turned in plane and tilted out. */
    private record Place(double x, double z, double shift, double turn, double tilt) {
    }

    private boolean holds(double length, Place place) {
        for (int i = 0; i <= ALONG; i++) {
            double along = length * (i - ALONG / 2) / ALONG + place.shift();
            for (int j = 0; j < ROUND; j++) {
                double angle = 2 * Math.PI * j / ROUND;
                if (!isInside(along, radius * Math.cos(angle), radius * Math.sin(angle), place)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** A point of the cylinder: along its axis (y of the torus), outward in the bend's plane, and out of the plane. */
    private boolean isInside(double along, double outward, double above, Place place) {
        double forward = along * Math.cos(place.tilt()) - above * Math.sin(place.tilt());
        double z = place.z() + along * Math.sin(place.tilt()) + above * Math.cos(place.tilt());
        double x = place.x() + outward * Math.cos(place.turn()) - forward * Math.sin(place.turn());
        double y = outward * Math.sin(place.turn()) + forward * Math.cos(place.turn());
        double fromCentreline = Math.sqrt(x * x + y * y) - bendRadius;
        return Math.sqrt(fromCentreline * fromCentreline + z * z) <= tubeRadius + TOUCH * bendRadius;
    }
}
