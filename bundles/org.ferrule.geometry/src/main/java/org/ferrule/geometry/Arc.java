/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

/**
 * Part of the circle on which the centre of a free disc lies while it touches a rigid one.
 *
 * @param disc the index of the rigid disc
 * @param radius the sum of both radii
 * @param from the angle of its beginning
 * @param to the angle of its end, more than from
 */
record Arc(int disc, double radius, double from, double to) {

    double middle() {
        return (from + to) / 2;
    }

    double x(FixedDiscs discs, double angle) {
        return discs.x(disc) + radius * Math.cos(angle);
    }

    double y(FixedDiscs discs, double angle) {
        return discs.y(disc) + radius * Math.sin(angle);
    }

    Arc firstHalf() {
        return new Arc(disc, radius, from, middle());
    }

    Arc secondHalf() {
        return new Arc(disc, radius, middle(), to);
    }

    /** Returns the least movement in a direction, from the middle to any point of the arc: zero or less. */
    double leastMovement(double direction) {
        double least = holds(direction + Math.PI) ? -1 : Math.min(Math.cos(from - direction), Math.cos(to - direction));
        return Math.min(0, radius * (least - Math.cos(middle() - direction)));
    }

    private boolean holds(double angle) {
        double turns = Math.ceil((from - angle) / (2 * Math.PI));
        return angle + turns * 2 * Math.PI <= to;
    }
}
