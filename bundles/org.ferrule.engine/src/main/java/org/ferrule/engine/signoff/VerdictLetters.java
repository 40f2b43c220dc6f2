/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.signoff;

import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.chart.look.VerdictLook;

/** A letter for each verdict, so that a row of verdicts is a short word. */
public final class VerdictLetters {
    private VerdictLetters() {
    }

    /** The letter of a verdict. */
    public static char of(VerdictLook look) {
        return switch (look) {
            case FITS -> 'f';
            case FITS_BY_CLAIM -> 'c';
            case TIGHT -> 't';
            case UNKNOWN -> 'u';
            case BLOCKED -> 'b';
        };
    }

    /** The verdict that a letter stands for; nothing for other letters. */
    public static Optional<VerdictLook> look(char letter) {
        return Stream.of(VerdictLook.values()).filter(look -> of(look) == letter).findFirst();
    }
}
