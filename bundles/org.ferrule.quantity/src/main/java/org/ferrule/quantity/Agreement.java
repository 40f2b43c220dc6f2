/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.quantity;

import java.util.List;
import java.util.stream.IntStream;
import org.ferrule.quantity.DimensionGrammar.Passage;

/**
 * Compares two statements of one dimension, such as {@code 0.070 in (1.78 mm)}. They agree if the second is the first
 * rounded to the second's last digit, or, where the first has decimals, the other way round.
 */
final class Agreement {

    private Agreement() {
    }

    static boolean holds(Passage one, Passage other) {
        List<Figure> first = one.statement().figures();
        List<Figure> second = other.statement().figures();
        return first.size() == second.size()
                && IntStream.range(0, first.size()).allMatch(i -> holds(first.get(i), second.get(i)));
    }

    private static boolean holds(Figure first, Figure second) {
        Length difference = first.length().minus(second.length()).abs();
        // A first figure without decimals is taken as exact: "6 Fr" is not 5.5 to 6.5 Fr.
        Length rounding = first.hasDecimals() ? first.halfLastPlace().max(second.halfLastPlace())
                : second.halfLastPlace();
        return difference.compareTo(rounding) <= 0;
    }
}
