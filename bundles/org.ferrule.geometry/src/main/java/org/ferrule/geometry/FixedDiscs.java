/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

/**
 * Discs with fixed centres, in a plane whose unit is half a third of a nanometre: so radii are the diameters in thirds
 * of a nanometre, and everything is whole as long as the input is.
 */
final class FixedDiscs {
    private final double[] x;
    private final double[] y;
    private final double[] radius;

    FixedDiscs(int size) {
        x = new double[size];
        y = new double[size];
        radius = new double[size];
    }

    /** Returns a copy with one more disc, whose centre is to be set. */
    FixedDiscs plus(double newRadius) {
        FixedDiscs more = new FixedDiscs(size() + 1);
        for (int i = 0; i < size(); i++) {
            more.set(i, x[i], y[i], radius[i]);
        }
        more.radius[size()] = newRadius;
        return more;
    }

    void set(int i, double newX, double newY, double newRadius) {
        radius[i] = newRadius;
        move(i, newX, newY);
    }

    void move(int i, double newX, double newY) {
        x[i] = newX;
        y[i] = newY;
    }

    int size() {
        return x.length;
    }

    double x(int i) {
        return x[i];
    }

    double y(int i) {
        return y[i];
    }

    double radius(int i) {
        return radius[i];
    }

    double distance(int i, int j) {
        return distance(i, x[j], y[j]);
    }

    double distance(int i, double fromX, double fromY) {
        return Math.hypot(x[i] - fromX, y[i] - fromY);
    }

    /** Returns how far disc i reaches from a point. */
    double reach(int i, double fromX, double fromY) {
        return distance(i, fromX, fromY) + radius[i];
    }
}
