/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture;

/** An element with an outline that may enclose an area. */
public sealed interface Shape extends Element permits Path, Rect, Ellipse {

    /** How it is drawn. */
    Style style();

    /** The same shape as lines and curves, in the same style. */
    Path outline();

    /** A box that holds the outline, without the width of the pen. */
    Box bounds();
}
