/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture;

/**
 * Paints elements, each kind by a method of its own.
 *
 * @param <E> what may go wrong
 */
public interface Painter<E extends Exception> {

    /** Paints a line. */
    void line(Line line) throws E;

    /** Paints a free outline. */
    void path(Path path) throws E;

    /** Paints a rectangle; as a path, if the medium has nothing better. */
    default void rect(Rect rect) throws E {
        path(rect.outline());
    }

    /** Paints an ellipse; as a path, if the medium has nothing better. */
    default void ellipse(Ellipse ellipse) throws E {
        path(ellipse.outline());
    }

    /** Paints a line of text. */
    void text(Text text) throws E;

    /** Paints a group in its own coordinates, within its clip. */
    void group(Group group) throws E;
}
