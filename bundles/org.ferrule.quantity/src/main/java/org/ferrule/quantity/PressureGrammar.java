/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.quantity;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.ferrule.quantity.Token.Kind;

/**
 * The grammar of a pressure:
 *
 * <pre>
 * pressure = figure { "/" figure | "(" figure ")" }
 * figure   = number unit
 * </pre>
 */
final class PressureGrammar {
    private static final String UNIT = "a unit (" + PressureUnit.symbols() + ")";

    private final TokenReader reader;

    /** One printed pressure. */
    record Figure(Token number, PressureUnit unit, int end) implements Printed {
        @Override
        public BigDecimal unitSize() {
            return unit.pascals();
        }

        @Override
        public String unitSymbol() {
            return unit.symbol();
        }
    }

    private PressureGrammar(String text) {
        reader = new TokenReader(text);
    }

    /** Returns the figures of the text; the first is the one that counts. */
    static List<Figure> parse(String text) {
        return new PressureGrammar(text).pressure();
    }

    private List<Figure> pressure() {
        List<Figure> figures = new ArrayList<>();
        figures.add(figure());
        while (!reader.isNext(Kind.END)) {
            figures.add(second());
        }
        return List.copyOf(figures);
    }

    private Figure second() {
        if (reader.accept(Kind.SLASH)) {
            return figure();
        }
        reader.expect(Kind.OPEN, "the end of the pressure");
        Figure figure = figure();
        reader.expect(Kind.CLOSE, "a closing bracket");
        return figure;
    }

    private Figure figure() {
        if (reader.isNext(Kind.MINUS)) {
            throw reader.expected("a pressure that is not negative");
        }
        Token number = reader.expect(Kind.NUMBER, "a number");
        PressureUnit unit = reader.acceptWord(PressureUnit::find).orElseThrow(() -> reader.expected(UNIT));
        return new Figure(number, unit, reader.end());
    }
}
