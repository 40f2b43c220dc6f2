/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry.search;

import java.util.Arrays;
import org.ferrule.geometry.search.Parts.Contact;

/**
 * What the descent makes small: the radius of the circle, times a weight, plus half the squares of all overlaps.
 * Each overlap may be shifted; with the right shifts (the multipliers of the constraints) the least energy lies where
 * nothing overlaps.
 */
final class Energy {
    private final Parts parts;
    private final Places places;
    private final double[] rimShift;
    private final double[] contactShift;
    private double weight = 1;
    private double gap;
    private int fixed;

    Energy(Parts parts) {
        this.parts = parts;
        places = new Places(parts);
        rimShift = new double[parts.discs()];
        contactShift = new double[parts.contacts.length];
    }

    /** Sets the weight of the radius and drops all shifts; the smaller the weight, the smaller the overlaps. */
    void soften(double newWeight) {
        weight = newWeight;
        Arrays.fill(rimShift, 0);
        Arrays.fill(contactShift, 0);
    }

    /** Lowers the weight and all shifts alike, which leaves the multipliers as they are. */
    void harden(double factor) {
        weight *= factor;
        for (int i = 0; i < rimShift.length; i++) {
            rimShift[i] *= factor;
        }
        for (int i = 0; i < contactShift.length; i++) {
            contactShift[i] *= factor;
        }
    }

    /** Sets the gap that bodies shall keep from each other. */
    void keepApart(double newGap) {
        gap = newGap;
    }

    /** Keeps the first variables and the radius as they are. */
    void fix(int firstVariables) {
        fixed = firstVariables;
        weight = 0;
    }

    /** Returns the energy and fills the gradient. */
    double at(double[] variables, double[] gradient) {
        places.locate(variables);
        Arrays.fill(gradient, 0);
        int last = parts.variables - 1;
        gradient[last] = weight;
        double squares = 0;
        for (int i = 0; i < rimShift.length; i++) {
            double limit = variables[last] - parts.radius[i] - rimShift[i];
            if (!places.isWithin(i, limit)) {
                double overlap = places.fromCentre(i) - limit;
                squares += overlap * overlap;
                gradient[last] -= overlap;
                push(gradient, parts.body[i], overlap, places.armX[i], places.armY[i]);
            }
        }
        for (int i = 0; i < contactShift.length; i++) {
            Contact contact = parts.contacts[i];
            double limit = contact.distance() + gap + contactShift[i];
            if (!places.isApart(contact, limit)) {
                double overlap = limit - places.distance(contact);
                squares += overlap * overlap;
                push(gradient, contact, overlap);
            }
        }
        if (fixed > 0) {
            Arrays.fill(gradient, 0, fixed, 0);
            gradient[last] = 0;
        }
        return weight * variables[last] + squares / 2;
    }

    private void push(double[] gradient, Contact contact, double overlap) {
        int disc = contact.disc();
        push(gradient, parts.body[disc], -overlap, places.armX[disc], places.armY[disc]);
        int other = parts.body[contact.from()];
        push(gradient, other, overlap, places.nearX - places.originX(other), places.nearY - places.originY(other));
    }

    private void push(double[] gradient, int body, double force, double armX, double armY) {
        int first = parts.first[body];
        gradient[first] += force * places.nx;
        gradient[first + 1] += force * places.ny;
        if (parts.turns[body]) {
            gradient[first + 2] += force * (armX * places.ny - armY * places.nx);
        }
    }

    /**
     * Moves each shift to its overlap with the shift, where that is positive. At a minimum of the energy the new
     * shifts, over the weight, say by how much the radius grows with each overlap that is taken away.
     *
     * @return the radius that is to be expected when all overlaps are gone
     */
    double shift(double[] variables) {
        places.locate(variables);
        double radius = variables[parts.variables - 1];
        double growth = 0;
        for (int i = 0; i < rimShift.length; i++) {
            double overlap = places.fromCentre(i) - radius + parts.radius[i];
            growth += shift(rimShift, i, overlap);
        }
        for (int i = 0; i < contactShift.length; i++) {
            Contact contact = parts.contacts[i];
            growth += shift(contactShift, i, contact.distance() + gap - places.distance(contact));
        }
        return radius + growth / weight;
    }

    private static double shift(double[] shifts, int i, double overlap) {
        double old = shifts[i];
        shifts[i] = Math.max(0, overlap + old);
        return shifts[i] * (shifts[i] - old);
    }

    /** Returns the radius that the circle needs for all discs where they lie. */
    double radius(double[] variables) {
        places.locate(variables);
        double radius = 0;
        for (int i = 0; i < rimShift.length; i++) {
            radius = Math.max(radius, places.fromCentre(i) + parts.radius[i]);
        }
        return radius;
    }

    /** Returns how far two bodies overlap at most; negative if none do. */
    double overlap(double[] variables) {
        places.locate(variables);
        double most = Double.NEGATIVE_INFINITY;
        for (Contact contact : parts.contacts) {
            most = Math.max(most, contact.distance() - places.distance(contact));
        }
        return most;
    }
}
