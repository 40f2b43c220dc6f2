/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry.search;

import org.ferrule.geometry.search.Parts.Contact;

/**
 * Where the discs of an arrangement lie, and how far apart two of them are. The end of a bar that has gone through
 * another bar is at a negative distance from it, if it is the end that has the shortest way back.
 */
final class Places {
    final double[] x;
    final double[] y;
    /** From the origin of the disc's body to its centre. */
    final double[] armX;
    final double[] armY;

    /** Of the distance asked for last: the unit vector in which it grows. */
    double nx;
    double ny;
    double distance;
    /** The point nearest to the disc's centre. */
    double nearX;
    double nearY;

    private boolean through;
    private final Parts parts;
    private double[] variables;

    Places(Parts parts) {
        this.parts = parts;
        x = new double[parts.discs()];
        y = new double[parts.discs()];
        armX = new double[parts.discs()];
        armY = new double[parts.discs()];
    }

    /** Computes the places of all discs; the array is kept. */
    void locate(double[] arrangement) {
        variables = arrangement;
        for (int i = 0; i < x.length; i++) {
            int body = parts.body[i];
            int first = parts.first[body];
            if (parts.turns[body]) {
                turn(i, StrictMath.cos(variables[first + 2]), StrictMath.sin(variables[first + 2]));
            }
            x[i] = variables[first] + armX[i];
            y[i] = variables[first + 1] + armY[i];
        }
    }

    private void turn(int i, double cos, double sin) {
        armX[i] = cos * parts.offsetX[i] - sin * parts.offsetY[i];
        armY[i] = sin * parts.offsetX[i] + cos * parts.offsetY[i];
    }

    double originX(int body) {
        return variables[parts.first[body]];
    }

    double originY(int body) {
        return variables[parts.first[body] + 1];
    }

    boolean isWithin(int disc, double limit) {
        return limit > 0 && x[disc] * x[disc] + y[disc] * y[disc] <= limit * limit;
    }

    /** Returns the distance of the disc's centre from the centre of the circle. */
    double fromCentre(int disc) {
        nearX = 0;
        nearY = 0;
        through = false;
        return measure(disc);
    }

    /** Tells, quickly, whether the distance is at least the limit. */
    boolean isApart(Contact contact, double limit) {
        near(contact);
        double dx = x[contact.disc()] - nearX;
        double dy = y[contact.disc()] - nearY;
        return !through && dx * dx + dy * dy >= limit * limit;
    }

    /** Returns the distance of the disc's centre from the other centre or from the bar's middle line. */
    double distance(Contact contact) {
        near(contact);
        return measure(contact.disc());
    }

    private void near(Contact contact) {
        int from = contact.from();
        int to = contact.to();
        nearX = x[from];
        nearY = y[from];
        through = contact.mate() != contact.disc() && isThrough(contact.disc(), contact.mate(), from, to);
        if (from != to) {
            nearOnBar(contact.disc(), from, x[to] - x[from], y[to] - y[from]);
        }
    }

    private void nearOnBar(int disc, int from, double alongX, double alongY) {
        // A bar so short that its square is nothing is as good as a disc.
        double squared = Math.max(alongX * alongX + alongY * alongY, Double.MIN_NORMAL);
        double part = ((x[disc] - x[from]) * alongX + (y[disc] - y[from]) * alongY) / squared;
        double clamped = Math.max(0, Math.min(1, part));
        nearX += clamped * alongX;
        nearY += clamped * alongY;
    }

    private boolean isThrough(int end, int mate, int from, int to) {
        double own = side(from, to, end);
        double mates = side(from, to, mate);
        double first = side(end, mate, from);
        double second = side(end, mate, to);
        if (own * mates >= 0 || first * second >= 0) {
            return false;
        }
        double length = StrictMath.hypot(x[mate] - x[end], y[mate] - y[end]);
        double otherLength = StrictMath.hypot(x[to] - x[from], y[to] - y[from]);
        return Math.abs(own) <= Math.abs(mates)
                && Math.abs(own) * length <= Math.min(Math.abs(first), Math.abs(second)) * otherLength;
    }

    /** Returns the cross product that says on which side of a line a disc is. */
    private double side(int from, int to, int disc) {
        return (x[to] - x[from]) * (y[disc] - y[from]) - (y[to] - y[from]) * (x[disc] - x[from]);
    }

    private double measure(int disc) {
        double dx = x[disc] - nearX;
        double dy = y[disc] - nearY;
        distance = Math.sqrt(dx * dx + dy * dy);
        // Two centres in one place are parted in any direction.
        nx = distance > 0 ? dx / distance : 1;
        ny = distance > 0 ? dy / distance : 0;
        if (through) {
            nx = -nx;
            ny = -ny;
            distance = -distance;
        }
        return distance;
    }
}
