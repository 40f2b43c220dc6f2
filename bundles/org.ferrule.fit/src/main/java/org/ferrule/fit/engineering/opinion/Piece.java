/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.opinion;

import java.util.function.ToDoubleFunction;

/**
 * A piece of a lumen or of a device, in stations from the end that is entered or that leads, in thirds of a nanometre.
 *
 * @param from its nearer station
 * @param to its farther station
 * @param start its diameter at the nearer station, of the values that were drawn
 * @param end its diameter at the farther station
 */
record Piece(long from, long to, ToDoubleFunction<double[]> start, ToDoubleFunction<double[]> end) {

    double at(double station, double[] drawn) {
        double first = start.applyAsDouble(drawn);
        return from == to || start == end ? first
                : first + (end.applyAsDouble(drawn) - first) * (station - from) / (to - from);
    }

    /** Whether it is as thick at one end as at the other. */
    boolean isStraight() {
        return start == end;
    }

    /** The part of it before a station. */
    Piece upTo(long station) {
        return between(from, Math.min(to, station));
    }

    /** The part of it from a station on. */
    Piece from(long station) {
        return between(Math.max(from, station), to);
    }

    private Piece between(long nearer, long farther) {
        return nearer == from && farther == to ? this
                : isStraight() ? new Piece(nearer, farther, start, end)
                        : new Piece(nearer, farther, drawn -> at(nearer, drawn), drawn -> at(farther, drawn));
    }

    Piece movedBy(long by) {
        return new Piece(from + by, to + by, start, end);
    }

    Piece reversed(long whole) {
        return new Piece(whole - to, whole - from, end, start);
    }
}
