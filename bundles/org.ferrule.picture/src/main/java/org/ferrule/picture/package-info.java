/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Drawings described in plain immutable Java and painted elsewhere: in a PDF, in an SVG file or on a screen.
 *
 * <p>All places and lengths are millimetres on paper, x to the right and y DOWN; angles are degrees, positive is
 * clockwise as seen. A {@link org.ferrule.picture.Picture} is one page; a {@link org.ferrule.picture.Document} is
 * several pages with what is to be known about them. A {@link org.ferrule.picture.PictureBuilder} makes pictures.
 * Text is laid out with a {@link org.ferrule.picture.TextMeasure}, so that a page is the same in every output.
 *
 * <p>No argument, component or return value is ever {@code null}; what may be missing is an
 * {@link java.util.Optional}. Values that cannot be drawn (not finite, a negative size, a control character in a text)
 * are refused with an {@link IllegalArgumentException} that names them.
 */
package org.ferrule.picture;
