/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.ferrule.fit.device.SourceRef;
import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.quantity.Length;

/**
 * A stretch of a lumen, or of a device that moves through it, with its diameter. Stations count from the end that is
 * entered (lumen) or that leads (device).
 *
 * @param name of the section it comes from
 * @param from the nearer station
 * @param to the farther station
 * @param diameter absent when it is unknown; then {@code notes} say why
 * @param proved whether the diameter is exact, and not only an upper bound of what several outlines need
 * @param notes what was assumed, or why the diameter is unknown
 * @param source where the figures were read
 * @param shape of a device: what lies across it, part by part, in stations from its tip whatever end leads; absent when
 *              the diameter is unknown, and of a lumen
 */
public record Stretch(String name, Length from, Length to, Optional<Taper> diameter, boolean proved,
        List<Reason> notes, SourceRef source, Optional<Shape> shape) {

    public Stretch {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(diameter, "diameter");
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(shape, "shape");
        notes = List.copyOf(notes);
    }

    /** A stretch of a lumen. */
    public Stretch(String name, Length from, Length to, Optional<Taper> diameter, boolean proved, List<Reason> notes,
            SourceRef source) {
        this(name, from, to, diameter, proved, notes, source, Optional.empty());
    }

    /** A stretch of which nobody knows the diameter. */
    public static Stretch unknown(String name, Length from, Length to, Reason why, SourceRef source) {
        return new Stretch(name, from, to, Optional.empty(), true, List.of(why), source);
    }

    /** The known diameter at one of its stations, rounded as told where it tapers. */
    Figure at(Length station, RoundingMode rounding) {
        Taper taper = diameter.orElseThrow();
        if (taper.isConstant() || station.equals(from)) {
            return taper.start();
        }
        return station.equals(to) ? taper.end()
                : taper.start().towards(taper.end(), station.minus(from), to.minus(from), rounding);
    }

    /** The part of it between two of its stations; diameters are rounded as told where it tapers. */
    Stretch between(Length start, Length end, RoundingMode rounding) {
        if (start.equals(from) && end.equals(to)) {
            return this;
        }
        Optional<Taper> part = diameter.map(t -> new Taper(at(start, rounding), at(end, rounding)));
        return new Stretch(name, start, end, part, proved, notes, source, shape);
    }

    /** Those stretches that lie before an end, the last ones cut there. */
    static List<Stretch> upTo(Length end, List<Stretch> stretches, RoundingMode rounding) {
        return stretches.stream().filter(s -> s.from.compareTo(end) < 0)
                .map(s -> s.between(s.from, s.to.min(end), rounding)).toList();
    }

    Stretch notProved() {
        return new Stretch(name, from, to, diameter, false, notes, source);
    }

    Stretch noting(Reason note) {
        List<Reason> more = new ArrayList<>(notes);
        more.add(note);
        return new Stretch(name, from, to, diameter, proved, more, source, shape);
    }

    /** The same stretch of a lumen that lies farther on the way, as a part of something that is called so. */
    Stretch movedBy(Length distance, String newName) {
        return new Stretch(newName, from.plus(distance), to.plus(distance), diameter, proved, notes, source, shape);
    }

    Stretch reversed(Length whole) {
        return new Stretch(name, whole.minus(to), whole.minus(from), diameter.map(Taper::reversed), proved, notes,
                source, shape);
    }

    /** The same stretches, counted from the other end of a whole; in the same order. */
    public static List<Stretch> reversed(List<Stretch> stretches, Length whole) {
        return stretches.stream().map(s -> s.reversed(whole)).toList();
    }
}
