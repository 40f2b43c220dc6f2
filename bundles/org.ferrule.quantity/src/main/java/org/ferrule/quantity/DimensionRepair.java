/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A text that says what a doubtful dimension most likely means. Every one can be read and is plausible; whoever offers
 * it lets the user decide.
 *
 * @param kind what it puts right
 * @param text the whole dimension anew
 */
public record DimensionRepair(Kind kind, String text) {

    /** What is put right. */
    public enum Kind {
        /** A unit spelled in another way: {@code 0.7 MM}, {@code 6 Fr.}. */
        UNIT_SPELLING,
        /** A decimal comma that cannot be a separator of thousands: {@code 0,05 mm}. */
        DECIMAL_POINT,
        /** A range whose ends are exchanged: {@code 0.94..0.88 mm}. */
        RANGE_ORDER,
        /** A bare number that is plausible in one of the units of labels only. */
        UNIT_MISSING,
        /** An implausible figure in metres that is plausible in millimetres, or the other way round. */
        UNIT_LIKELY,
        /** A figure that does not say whether it is a minimum, a nominal or a maximum: one repair for each. */
        MEANING
    }

    private static final List<String> MEANINGS = List.of("min", "nom", "max");

    /**
     * Returns the repairs of a text, the likeliest first; none where two readings are equally likely.
     *
     * @param text a dimension, whether it can be read or not
     * @param kind what it is a figure of; nothing if that is not known, and then nothing that depends on it is offered
     */
    public static List<DimensionRepair> of(String text, Optional<FigureKind> kind) {
        Dimension read = Dimension.lenient(text);
        if (!read.readable()) {
            return unreadable(text, kind);
        }
        List<DimensionRepair> repairs = new ArrayList<>();
        if (isDoubtful(read, kind)) {
            accept(Kind.UNIT_LIKELY, UnitRepairs.doubledLetter(text), kind).ifPresent(repairs::add);
        } else if (isPlainFigure(read)) {
            MEANINGS.forEach(word -> accept(Kind.MEANING, Optional.of(text.stripTrailing() + " " + word), kind)
                    .ifPresent(repairs::add));
        }
        return List.copyOf(repairs);
    }

    private static List<DimensionRepair> unreadable(String text, Optional<FigureKind> kind) {
        Optional<String> point = TextRepairs.decimalPoint(text);
        String pointed = point.orElse(text);
        return Stream.of(accept(Kind.DECIMAL_POINT, point, kind),
                accept(Kind.UNIT_SPELLING, UnitRepairs.spelling(pointed), kind),
                accept(Kind.RANGE_ORDER, TextRepairs.rangeOrder(UnitRepairs.spelling(pointed).orElse(pointed)), kind),
                accept(Kind.UNIT_MISSING, kind.flatMap(known -> UnitRepairs.missing(pointed, known)), kind))
                .flatMap(Optional::stream).toList();
    }

    private static boolean isPlainFigure(Dimension read) {
        return read.meaning() == Meaning.STATED && read.low().isEmpty() && read.high().isEmpty();
    }

    private static Optional<DimensionRepair> accept(Kind repaired, Optional<String> text, Optional<FigureKind> kind) {
        return text.map(Dimension::lenient).filter(read -> read.readable() && !isDoubtful(read, kind))
                .map(read -> new DimensionRepair(repaired, read.text()));
    }

    private static boolean isDoubtful(Dimension read, Optional<FigureKind> kind) {
        return kind.isPresent() && !read.warnings(kind.get()).isEmpty();
    }
}
