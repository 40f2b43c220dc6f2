/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture;

/**
 * A straight line.
 *
 * @param from where it begins
 * @param to where it ends
 * @param stroke how it is drawn
 */
public record Line(Point from, Point to, Stroke stroke) implements Element {

    @Override
    public <E extends Exception> void paintOn(Painter<E> painter) throws E {
        painter.line(this);
    }
}
