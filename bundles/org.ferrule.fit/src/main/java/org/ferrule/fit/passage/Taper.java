/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import org.ferrule.fit.figure.Figure;
import org.ferrule.quantity.Length;

/**
 * A diameter that runs linearly from one figure to another.
 *
 * @param start at the leading end of its stretch
 * @param end at the trailing end of its stretch
 */
public record Taper(Figure start, Figure end) {

    public Taper {
        if (start.equals(end)) {
            end = start;
        }
    }

    /** The same figure all along. */
    public static Taper constant(Figure figure) {
        return new Taper(figure, figure);
    }

    /** Whether it is the same all along. */
    public boolean isConstant() {
        return start == end;
    }

    /** Whether the label leaves a centre to be assumed anywhere. */
    public boolean centreAssumed() {
        return start.centreAssumed() || end.centreAssumed();
    }

    /** The smaller of both figures, end by end. */
    public Figure smallest() {
        return start.min(end);
    }

    /** The larger of both figures, end by end. */
    public Figure largest() {
        return start.max(end);
    }

    /** The lower end of the figure where that is smallest. */
    Length narrowest() {
        return start.low().min(end.low());
    }

    /** The upper end of the figure where that is largest. */
    Length widest() {
        return start.high().max(end.high());
    }

    Taper reversed() {
        return new Taper(end, start);
    }
}
