/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.quantity;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.ferrule.quantity.QuantityWarning.Code;

/** Finds figures that are implausible for their kind and the unit in which they would be plausible. */
final class Plausibility {
    private static final List<LengthUnit> LIKELY_UNITS = List.of(LengthUnit.MILLIMETRE, LengthUnit.INCH,
            LengthUnit.FRENCH, LengthUnit.CENTIMETRE);

    private Plausibility() {
    }

    /** Returns the warning for one printed figure. */
    static Optional<QuantityWarning> check(Figure figure, FigureKind kind) {
        Length length = figure.length();
        if (kind.isPlausible(length)) {
            return Optional.empty();
        }
        boolean small = length.compareTo(kind.least()) < 0;
        Length bound = small ? kind.least() : kind.most();
        List<String> arguments = List.of(figure.label(), bound.toString(), likelier(figure, kind));
        return Optional.of(new QuantityWarning(small ? Code.IMPLAUSIBLY_SMALL : Code.IMPLAUSIBLY_LARGE,
                figure.start(), figure.end(), arguments));
    }

    private static String likelier(Figure figure, FigureKind kind) {
        return LIKELY_UNITS.stream().map(unit -> new Figure(figure.number(), unit))
                .filter(other -> kind.isPlausible(other.length())).map(Figure::label).findFirst().orElse("");
    }

    /** Returns the warnings for all ends and centres that a statement prints. */
    static Stream<QuantityWarning> check(Statement statement, FigureKind kind) {
        return statement.values().stream().flatMap(figure -> check(figure, kind).stream());
    }
}
