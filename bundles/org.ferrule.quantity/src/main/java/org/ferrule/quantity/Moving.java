/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

import org.ferrule.quantity.DimensionGrammar.Passage;

/** Prints a dimension anew with its figure moved, so that everything else of the text stays as typed. */
final class Moving {
    private final StringBuilder text;
    private int shift;

    private Moving(String text) {
        this.text = new StringBuilder(text);
    }

    /** The text with its first figure moved to a length; the others move by as much. */
    static String move(String text, List<Passage> passages, Length to) {
        Length by = to.minus(passages.get(0).statement().first().length());
        Moving moving = new Moving(text);
        for (Passage passage : passages) {
            boolean main = passage == passages.get(0);
            passage.statement().values().forEach(figure -> moving.print(figure, figure.length().plus(by), main));
        }
        return moving.text.toString();
    }

    private void print(Figure figure, Length length, boolean exactly) {
        int decimals = Math.max(0, figure.value().scale());
        BigDecimal number = length.in(figure.unit(), decimals, RoundingMode.HALF_EVEN);
        String printed = exactly && !Length.of(number, figure.unit()).equals(length)
                ? LengthFormat.faithful(figure.unit()).number(length) : number.toPlainString();
        replace(figure, figure.number().text().startsWith(".") && printed.startsWith("0.") ? printed.substring(1)
                : printed);
    }

    private void replace(Figure figure, String printed) {
        text.replace(figure.start() + shift, figure.end() + shift, printed);
        shift += printed.length() - (figure.end() - figure.start());
    }
}
