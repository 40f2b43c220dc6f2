/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture;

/**
 * How much room text takes. Layout asks a measure and never a screen or a printer, so that lines break at the same
 * words in every output.
 */
public interface TextMeasure {

    /** The measure that every output follows: the advance widths of the font that is embedded in PDF files. */
    static TextMeasure standard() {
        return AdvanceTable.standard();
    }

    /** The width of one line of text, in millimetres. */
    double widthMm(String text, TextStyle style);

    /** How far the tallest letters rise above the baseline, in millimetres. */
    double ascentMm(TextStyle style);

    /** How far the lowest letters reach below the baseline, in millimetres, a positive number. */
    double descentMm(TextStyle style);

    /** The height of a capital letter, in millimetres; half of it below a middle is the baseline of centred text. */
    double capHeightMm(TextStyle style);

    /** The usual distance from baseline to baseline, in millimetres. */
    default double leadingMm(TextStyle style) {
        return ascentMm(style) + descentMm(style);
    }
}
