/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.math.BigDecimal;
import java.math.RoundingMode;

import org.ferrule.fit.figure.Figure;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** Numbers of answers as JSON has them: in millimetres, at a nanometre, rounded as the one who asks says. */
final class Millimetres {
    private static final int DECIMALS = 6;

    private Millimetres() {
    }

    static BigDecimal of(Length length, RoundingMode rounding) {
        return plain(length.in(LengthUnit.MILLIMETRE, DECIMALS, rounding));
    }

    /** A length that is given, not worked out. */
    static BigDecimal of(Length length) {
        return of(length, RoundingMode.HALF_EVEN);
    }

    /** A number that was worked out in binary, with as many decimals. */
    static BigDecimal of(double number, RoundingMode rounding) {
        return plain(BigDecimal.valueOf(number).setScale(DECIMALS, rounding));
    }

    static ObjectNode of(Figure figure, RoundingMode rounding) {
        return JsonNodeFactory.instance.objectNode().put("low", of(figure.low(), rounding))
                .put("centre", of(figure.centre(), rounding)).put("high", of(figure.high(), rounding));
    }

    private static BigDecimal plain(BigDecimal number) {
        BigDecimal value = number.stripTrailingZeros();
        return value.scale() < 0 ? value.setScale(0) : value;
    }
}
