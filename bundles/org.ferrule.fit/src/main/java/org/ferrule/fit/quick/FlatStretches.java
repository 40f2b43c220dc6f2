/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.quick;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.passage.Stretch;
import org.ferrule.fit.passage.Taper;
import org.ferrule.quantity.Length;

/**
 * Stretches of a lumen or of a device as plain numbers, in thirds of a nanometre and in their order; those of unknown
 * diameter are left out, but for where they begin. "Start" is the end that is met first. What belongs to a stretch lies
 * together, since a processor fetches neighbours at once.
 */
final class FlatStretches {
    /** A station that nothing reaches. */
    static final long NOWHERE = 1L << 40;

    /** Beyond 5.7 m and 22 mm products of differences might not fit into a long. */
    private static final long FARTHEST = 1L << 34;
    private static final int WIDEST = 1 << 26;

    private static final int STATIONS = 2;
    private static final int FIGURES = 8;
    private static final int FLAGS = 6;
    private static final int NAME = 7;
    private static final int CONSTANT = 1;
    private static final int ASSUMED = 2;
    private static final int PROVED = 4;

    private final int count;
    private final long[] stations;
    private final int[] figures;
    private final long first;
    private final long firstUnknown;
    private final boolean isSorted;

    /**
     * Stretches as numbers.
     *
     * @param all in the order in which they are looked at
     * @param names the different names of them
     */
    FlatStretches(List<Stretch> all, List<String> names) {
        Stretch[] known = all.stream().filter(s -> s.diameter().isPresent()).toArray(Stretch[]::new);
        count = known.length;
        stations = new long[count * STATIONS];
        figures = new int[count * FIGURES];
        for (int i = 0; i < count; i++) {
            put(i, known[i], names.indexOf(known[i].name()));
        }
        long firstOfAll = NOWHERE;
        long firstOfUnknown = NOWHERE;
        for (Stretch stretch : all) {
            firstOfAll = Math.min(firstOfAll, stretch.from().thirdNanometres());
            if (stretch.diameter().isEmpty()) {
                firstOfUnknown = Math.min(firstOfUnknown, stretch.from().thirdNanometres());
            }
        }
        first = firstOfAll;
        firstUnknown = firstOfUnknown;
        isSorted = IntStream.range(1, count).allMatch(i -> from(i - 1) <= from(i));
    }

    private void put(int i, Stretch stretch, int name) {
        Taper taper = stretch.diameter().orElseThrow();
        stations[i * STATIONS] = stretch.from().thirdNanometres();
        stations[i * STATIONS + 1] = stretch.to().thirdNanometres();
        put(i * FIGURES, taper.start());
        put(i * FIGURES + 3, taper.end());
        figures[i * FIGURES + FLAGS] = (taper.isConstant() ? CONSTANT : 0) | (taper.centreAssumed() ? ASSUMED : 0)
                | (stretch.proved() ? PROVED : 0);
        figures[i * FIGURES + NAME] = name;
    }

    private void put(int at, Figure figure) {
        figures[at] = (int) figure.low().thirdNanometres();
        figures[at + 1] = (int) figure.centre().thirdNanometres();
        figures[at + 2] = (int) figure.high().thirdNanometres();
    }

    /** Whether products of the numbers fit. */
    static boolean holds(List<Stretch> all) {
        for (Stretch stretch : all) {
            if (!isNear(stretch.from()) || !isNear(stretch.to())
                    || stretch.diameter().filter(t -> !holds(t.start()) || !holds(t.end())).isPresent()) {
                return false;
            }
        }
        return true;
    }

    private static boolean holds(Figure figure) {
        return !figure.low().isNegative() && figure.high().thirdNanometres() < WIDEST;
    }

    /** Whether a length is one that can be reckoned with here. */
    static boolean isNear(Length length) {
        return Math.abs(length.thirdNanometres()) <= FARTHEST;
    }

    /** Whether two hold the same numbers, whatever their stretches are called. */
    boolean isSameAs(FlatStretches other) {
        if (first != other.first || firstUnknown != other.firstUnknown || !Arrays.equals(stations, other.stations)) {
            return false;
        }
        for (int i = 0; i < figures.length; i++) {
            if (i % FIGURES != NAME && figures[i] != other.figures[i]) {
                return false;
            }
        }
        return true;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof FlatStretches that && first == that.first && firstUnknown == that.firstUnknown
                && Arrays.equals(stations, that.stations) && Arrays.equals(figures, that.figures);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(stations) * 31 + Arrays.hashCode(figures);
    }

    /** How many stretches of known diameter there are. */
    int count() {
        return count;
    }

    /** Where the first of all stretches begins. */
    long first() {
        return first;
    }

    /** Where the first stretch of unknown diameter begins. */
    long firstUnknown() {
        return firstUnknown;
    }

    /** Whether no stretch of known diameter begins before the one that it follows. */
    boolean isSorted() {
        return isSorted;
    }

    long from(int i) {
        return stations[i * STATIONS];
    }

    long to(int i) {
        return stations[i * STATIONS + 1];
    }

    int startLow(int i) {
        return figures[i * FIGURES];
    }

    int startCentre(int i) {
        return figures[i * FIGURES + 1];
    }

    int startHigh(int i) {
        return figures[i * FIGURES + 2];
    }

    int endLow(int i) {
        return figures[i * FIGURES + 3];
    }

    int endCentre(int i) {
        return figures[i * FIGURES + 4];
    }

    int endHigh(int i) {
        return figures[i * FIGURES + 5];
    }

    boolean isConstant(int i) {
        return (figures[i * FIGURES + FLAGS] & CONSTANT) != 0;
    }

    /** Whether a centre is only assumed at either end. */
    boolean isAssumed(int i) {
        return (figures[i * FIGURES + FLAGS] & ASSUMED) != 0;
    }

    boolean isProved(int i) {
        return (figures[i * FIGURES + FLAGS] & PROVED) != 0;
    }

    /** Place of its name among the different names of all stretches. */
    int name(int i) {
        return figures[i * FIGURES + NAME];
    }
}
