/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.plot;

import java.util.Comparator;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.profile.ProfileComparison;
import org.ferrule.profile.ProfiledDevice;
import org.ferrule.profile.curve.Mark;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;

/**
 * Which part of a comparison a plot shows, and how.
 *
 * @param from the most distal station, from the landmark
 * @param to the most proximal station, proximal to {@code from}
 * @param diameters from the smallest to the largest diameter; absent for from zero to the largest in sight
 * @param bands whether intervals are drawn
 * @param lumens whether the lumens of the devices are drawn
 */
public record View(Length from, Length to, Optional<Diameters> diameters, boolean bands, boolean lumens) {
    /** No plot shows less than this along a device, and no less of a diameter. */
    public static final Length LEAST = Length.of("0.01", LengthUnit.MILLIMETRE);
    private static final Length BEYOND_LAST = Length.of("5", LengthUnit.MILLIMETRE);
    private static final long PERCENT = 100;
    private static final long ROOM_PERCENT = 4;

    /** A range of diameters. */
    public record Diameters(Length low, Length high) {
        public Diameters {
            if (high.minus(low).compareTo(LEAST) < 0) {
                throw new IllegalArgumentException("diameters from " + low + " to " + high + ": too little to show");
            }
        }
    }

    public View {
        Objects.requireNonNull(diameters, "diameters");
        if (to.minus(from).compareTo(LEAST) < 0) {
            throw new IllegalArgumentException("stations from " + from + " to " + to + ": too little to show");
        }
    }

    /** Everything that is described of any device. */
    public static View whole(ProfileComparison comparison) {
        return around(comparison.from(), comparison.to());
    }

    /**
     * The part where devices differ most: up to the last exit port, rigid part, marker, crossing, first contact or
     * beginning of a largest part; everything when that is not much shorter.
     */
    public static View distal(ProfileComparison comparison) {
        Length last = events(comparison).max(Comparator.naturalOrder()).orElse(comparison.to());
        boolean muchShorter = last.minus(comparison.from()).times(2)
                .compareTo(comparison.to().minus(comparison.from())) < 0;
        return muchShorter ? around(comparison.from(), last.plus(BEYOND_LAST)) : whole(comparison);
    }

    private static View around(Length from, Length to) {
        Length end = to.minus(from).compareTo(LEAST) < 0 ? from.plus(BEYOND_LAST) : to;
        Length room = end.minus(from).times(ROOM_PERCENT).dividedBy(PERCENT);
        return new View(from.minus(room), end.plus(room), Optional.empty(), true, true);
    }

    private static Stream<Length> events(ProfileComparison comparison) {
        Stream<Length> marks = comparison.devices().stream().map(ProfiledDevice::curves).flatMap(Optional::stream)
                .flatMap(curves -> Stream.concat(curves.marks().stream().map(Mark::to),
                        curves.outer().largestAt().stream()));
        Stream<Length> crossings = comparison.crossings().stream().map(c -> c.crossing().station());
        Stream<Length> contacts = comparison.passages().stream()
                .flatMap(p -> Stream.of(p.stopsAt(), p.worstAt()).flatMap(Optional::stream));
        return Stream.of(marks, crossings, contacts).flatMap(stations -> stations);
    }

    /** The length in sight. */
    public Length length() {
        return to.minus(from);
    }

    /**
     * A closer or wider view round a station that stays where it is.
     *
     * @param percent of the length in sight that is in sight then, above 0
     */
    public View zoomed(Length around, int percent) {
        Length left = around.minus(from).times(percent).dividedBy(PERCENT);
        Length right = to.minus(around).times(percent).dividedBy(PERCENT);
        return left.plus(right).compareTo(LEAST) < 0 ? this : along(around.minus(left), around.plus(right));
    }

    /** The view shifted along the devices. */
    public View moved(Length by) {
        return along(from.plus(by), to.plus(by));
    }

    /** The view of other stations. */
    public View along(Length start, Length end) {
        return new View(start, end, diameters, bands, lumens);
    }

    /** The view of other diameters; absent for from zero to the largest in sight. */
    public View of(Optional<Diameters> range) {
        return new View(from, to, range, bands, lumens);
    }

    /** The view with or without intervals. */
    public View withBands(boolean drawn) {
        return new View(from, to, diameters, drawn, lumens);
    }

    /** The view with or without the lumens of the devices. */
    public View withLumens(boolean drawn) {
        return new View(from, to, diameters, bands, drawn);
    }
}
