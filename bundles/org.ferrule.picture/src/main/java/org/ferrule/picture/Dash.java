/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture;

import java.util.List;

/**
 * The pattern of a broken line: lengths drawn and left out in turn, in millimetres. An empty list is a solid line.
 *
 * @param lengthsMm an even number of lengths, each greater than 0
 */
public record Dash(List<Double> lengthsMm) {

    /** An unbroken line. */
    public static final Dash SOLID = of();
    /** Dashes, for what is hidden or assumed. */
    public static final Dash DASHED = of(1.6, 1.0);
    /** Short dashes that read as dots. */
    public static final Dash DOTTED = of(0.4, 0.7);
    /** Dash and dot, for axes of symmetry. */
    public static final Dash CENTRE_LINE = of(4.0, 0.9, 0.6, 0.9);

    public Dash {
        lengthsMm = List.copyOf(lengthsMm);
        lengthsMm.forEach(length -> Check.positive("dash length", length));
        if (lengthsMm.size() % 2 != 0) {
            throw new IllegalArgumentException("A dash needs an even number of lengths, but has " + lengthsMm);
        }
    }

    /** A dash from lengths drawn and left out in turn, in millimetres. */
    public static Dash of(Double... lengthsMm) {
        return new Dash(List.of(lengthsMm));
    }

    /** Whether the line is unbroken. */
    public boolean isSolid() {
        return lengthsMm.isEmpty();
    }
}
