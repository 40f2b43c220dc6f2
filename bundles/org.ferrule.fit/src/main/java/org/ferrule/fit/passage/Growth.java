/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import java.math.BigDecimal;
import java.math.RoundingMode;

import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.rules.AfterUseRule;
import org.ferrule.quantity.Length;

/** The profile of a folded balloon after one inflation, where only a rule tells how it grows. */
final class Growth {
    private Growth() {
    }

    static Figure of(Figure folded, AfterUseRule rule) {
        return new Figure(times(folded.low(), rule.low()), times(folded.centre(), rule.centre()),
                times(folded.high(), rule.high()), true);
    }

    private static Length times(Length value, BigDecimal factor) {
        BigDecimal product = BigDecimal.valueOf(value.thirdNanometres()).multiply(factor);
        return new Length(product.setScale(0, RoundingMode.CEILING).longValueExact());
    }
}
