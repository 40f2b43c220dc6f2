/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.svg;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;
import org.ferrule.picture.Point;
import org.ferrule.picture.Transform;

/** Numbers as short as they can be written, always with a decimal point. */
final class Numbers {

    /** A tenth of a micrometre, finer than any printer. */
    private static final int LENGTH_DECIMALS = 4;
    private static final int FACTOR_DECIMALS = 8;

    private Numbers() {
    }

    static String mm(double value) {
        return text(value, LENGTH_DECIMALS);
    }

    static String degrees(double value) {
        return text(value, LENGTH_DECIMALS);
    }

    static String point(Point point) {
        return mm(point.xMm()) + " " + mm(point.yMm());
    }

    static String list(List<Double> lengthsMm) {
        return lengthsMm.stream().map(Numbers::mm).collect(Collectors.joining(" "));
    }

    /** A transformation as an attribute, in the shortest of its forms. */
    static String transform(Transform t) {
        boolean shiftOnly = t.equals(Transform.translation(t.eMm(), t.fMm()));
        String shift = mm(t.eMm()) + " " + mm(t.fMm());
        return shiftOnly ? "translate(" + shift + ")"
                : "matrix(" + factor(t.a()) + " " + factor(t.b()) + " " + factor(t.c()) + " " + factor(t.d()) + " "
                        + shift + ")";
    }

    private static String factor(double value) {
        return text(value, FACTOR_DECIMALS);
    }

    private static String text(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
