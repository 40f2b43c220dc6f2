/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.quick;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.passage.Stretch;
import org.ferrule.fit.passage.Taper;
import org.ferrule.quantity.Length;

/**
 * Stretches of a lumen or of a device as plain numbers, in thirds of a nanometre and in their order; those of unknown
 * diameter are left out, but for where they begin. "Start" is the end that is met first. Fields are read in the innermost
 * loops, and never written.
 */
final class FlatStretches {
    /** A station that nothing reaches. */
    static final long NOWHERE = 1L << 40;

    /** Beyond 5.7 m and 22 mm products of differences might not fit into a long. */
    private static final long FARTHEST = 1L << 34;
    private static final int WIDEST = 1 << 26;

    final int count;
    final long[] from;
    final long[] to;
    final int[] startLow;
    final int[] startCentre;
    final int[] startHigh;
    final int[] endLow;
    final int[] endCentre;
    final int[] endHigh;
    final boolean[] constant;
    final boolean[] assumed;
    final boolean[] proved;
    /** Place of its name among the different names of all stretches. */
    final int[] name;
    /** Where the first of all stretches begins. */
    final long first;
    /** Where the first stretch of unknown diameter begins. */
    final long firstUnknown;

    private FlatStretches(List<Stretch> all, List<String> names) {
        List<Stretch> known = all.stream().filter(s -> s.diameter().isPresent()).toList();
        count = known.size();
        from = known.stream().mapToLong(s -> s.from().thirdNanometres()).toArray();
        to = known.stream().mapToLong(s -> s.to().thirdNanometres()).toArray();
        startLow = figures(known, Taper::start, Figure::low);
        startCentre = figures(known, Taper::start, Figure::centre);
        startHigh = figures(known, Taper::start, Figure::high);
        endLow = figures(known, Taper::end, Figure::low);
        endCentre = figures(known, Taper::end, Figure::centre);
        endHigh = figures(known, Taper::end, Figure::high);
        constant = new boolean[count];
        assumed = new boolean[count];
        proved = new boolean[count];
        name = new int[count];
        for (int i = 0; i < count; i++) {
            Stretch stretch = known.get(i);
            constant[i] = stretch.diameter().orElseThrow().isConstant();
            assumed[i] = stretch.diameter().orElseThrow().centreAssumed();
            proved[i] = stretch.proved();
            name[i] = names.indexOf(stretch.name());
        }
        first = first(all.stream());
        firstUnknown = first(all.stream().filter(s -> s.diameter().isEmpty()));
    }

    private static int[] figures(List<Stretch> known, Function<Taper, Figure> end, Function<Figure, Length> lane) {
        return known.stream().mapToInt(s -> (int) lane.apply(end.apply(s.diameter().orElseThrow())).thirdNanometres())
                .toArray();
    }

    private static long first(Stream<Stretch> stretches) {
        return stretches.mapToLong(s -> s.from().thirdNanometres()).min().orElse(NOWHERE);
    }

    /**
     * Stretches as numbers.
     *
     * @param all in the order in which they are looked at
     * @param names the different names of them
     */
    static FlatStretches of(List<Stretch> all, List<String> names) {
        return new FlatStretches(all, names);
    }

    /** Whether products of the numbers fit. */
    static boolean holds(List<Stretch> all) {
        return all.stream().allMatch(s -> isNear(s.from()) && isNear(s.to())
                && s.diameter().stream().flatMap(t -> Stream.of(t.start(), t.end()))
                        .allMatch(f -> !f.low().isNegative() && f.high().thirdNanometres() < WIDEST));
    }

    /** Whether a length is one that can be reckoned with here. */
    static boolean isNear(Length length) {
        return Math.abs(length.thirdNanometres()) <= FARTHEST;
    }

    /** Whether two hold the same numbers. */
    boolean isSameAs(FlatStretches other) {
        return first == other.first && firstUnknown == other.firstUnknown
                && Arrays.equals(from, other.from) && Arrays.equals(to, other.to)
                && Arrays.equals(startLow, other.startLow)
                && Arrays.equals(startCentre, other.startCentre)
                && Arrays.equals(startHigh, other.startHigh)
                && Arrays.equals(endLow, other.endLow)
                && Arrays.equals(endCentre, other.endCentre)
                && Arrays.equals(endHigh, other.endHigh)
                && Arrays.equals(constant, other.constant)
                && Arrays.equals(assumed, other.assumed) && Arrays.equals(proved, other.proved);
    }
}
