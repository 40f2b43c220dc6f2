/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.quantity;

import java.util.Optional;
import org.ferrule.quantity.Token.Kind;

/** Reads numbers with length units from a text and refuses what is not a length. */
final class FigureReader {
    private static final String UNIT = "a unit (" + LengthUnit.symbols() + ")";
    /** Far beyond any device; keeps every sum of parsed figures in range. */
    private static final Length LIMIT = Length.of("1000", LengthUnit.METRE);

    private final TokenReader reader;

    FigureReader(TokenReader reader) {
        this.reader = reader;
    }

    /** Reads a number and its unit, which may be missing so far. */
    Figure figure() {
        Token number = reader.expect(Kind.NUMBER, "a number");
        return new Figure(number, reader.acceptWord(LengthUnit::find).orElse(null));
    }

    /** Reads a number that must have its unit. */
    Figure figureWithUnit() {
        Figure figure = figure();
        return complete(figure, figure.unit());
    }

    /** Gives a figure the unit of its neighbour if it has none, and checks that it is a length. */
    Figure complete(Figure figure, LengthUnit neighbour) {
        LengthUnit unit = Optional.ofNullable(neighbour).orElseThrow(this::unitExpected);
        Figure whole = figure.orIn(unit);
        if (isTooLong(whole)) {
            throw reader.expected(figure.number(), "a length below 1000 m");
        }
        return whole;
    }

    private static boolean isTooLong(Figure figure) {
        // The number is limited to 30 digits, which may still be more than a Length holds.
        return figure.value().precision() - figure.value().scale() > 9 || figure.length().compareTo(LIMIT) >= 0;
    }

    private QuantitySyntaxException unitExpected() {
        Token next = reader.peek();
        boolean gauge = next.isWord("g") || next.isWord("ga") || next.isWord("gauge");
        return reader.expected(gauge ? UNIT + ", because a gauge means nothing without its table" : UNIT);
    }
}
