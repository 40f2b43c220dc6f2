/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.page;

import org.ferrule.picture.Ink;
import org.ferrule.picture.TextMeasure;
import org.ferrule.picture.TextStyle;

/**
 * The lettering and the measures of a page.
 *
 * @param scale how much larger everything is than on A4, where nothing is set smaller than 6.5 pt
 */
public record PageStyle(double scale) {
    private static final double SMALLEST_PT = 6.5;
    private static final double USUAL_PT = 7.5;
    private static final double LARGEST_TITLE = 1.4;

    /** The title of a page. */
    public TextStyle title() {
        return TextStyle.ofPt(15 * Math.min(scale, LARGEST_TITLE)).bold();
    }

    /** What stands below a title. */
    public TextStyle subtitle() {
        return TextStyle.ofPt(9 * scale);
    }

    /** Headings. */
    public TextStyle heading() {
        return TextStyle.ofPt(9 * scale).bold();
    }

    /** Text that is read, not looked up. */
    public TextStyle body() {
        return TextStyle.ofPt(USUAL_PT * scale);
    }

    /** Names of devices and numbers in cells. */
    public TextStyle strong() {
        return TextStyle.ofPt(USUAL_PT * scale).condensed().bold();
    }

    /** Words in cells, details of devices, footnotes, cautions. */
    public TextStyle small() {
        return TextStyle.ofPt(SMALLEST_PT * scale).condensed();
    }

    /** What stands back. */
    public TextStyle muted() {
        return small().in(Ink.MUTED);
    }

    /** The margin of the page. */
    public double margin() {
        return 9;
    }

    /** The size of a shape beside text. */
    public double glyph() {
        return 2.9 * scale;
    }

    /** The room round what stands in a box. */
    public double padding() {
        return 0.9 * scale;
    }

    /** The distance from line to line, in millimetres. */
    public static double leading(TextStyle style) {
        return TextMeasure.standard().leadingMm(style);
    }

    /** The width of one line, in millimetres. */
    public static double width(String text, TextStyle style) {
        return TextMeasure.standard().widthMm(text, style);
    }

    /** The baseline of a line of text whose room begins at a height. */
    public static double baseline(double top, TextStyle style) {
        return top + TextMeasure.standard().ascentMm(style);
    }
}
