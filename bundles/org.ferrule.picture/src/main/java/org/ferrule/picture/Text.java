/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture;

/**
 * One line of text.
 *
 * @param at a place on the baseline; which part of the text stands there is told by the anchor
 * @param string the text, without line breaks or other control characters
 * @param style how it is set
 * @param anchor which part of the text stands at the place
 * @param rotationDegrees turn about the place, positive is clockwise: -90 reads upwards
 */
public record Text(Point at, String string, TextStyle style, Anchor anchor, double rotationDegrees)
        implements
            Element {

    /** Which part of a text stands at its place. */
    public enum Anchor {
        /** The left end. */
        START,
        /** The middle. */
        MIDDLE,
        /** The right end. */
        END
    }

    public Text {
        Check.printable("Text \"" + string + "\"", string);
        Check.finite("rotation", rotationDegrees);
    }

    @Override
    public <E extends Exception> void paintOn(Painter<E> painter) throws E {
        painter.text(this);
    }
}
