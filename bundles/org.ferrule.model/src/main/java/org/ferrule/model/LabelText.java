/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Puts labels together from what is there. */
final class LabelText {

    private LabelText() {
    }

    /** The parts that are there, with the separator between them. */
    static String joined(String separator, Object... parts) {
        return Stream.of(parts).filter(Objects::nonNull).map(Object::toString).filter(part -> !part.isEmpty())
                .collect(Collectors.joining(separator));
    }

    /** A range of which an end may be missing; null without both. */
    static String range(Object from, Object to) {
        return from == null && to == null ? null : Objects.toString(from, "?") + " to " + Objects.toString(to, "?");
    }

    /** A number as it was written; null without one. */
    static String number(BigDecimal number) {
        return number == null ? null : number.toPlainString();
    }
}
