/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import org.ferrule.picture.Box;
import org.ferrule.picture.Ink;
import org.ferrule.picture.TextMeasure;
import org.ferrule.picture.TextStyle;

/**
 * How the room of a longitudinal drawing is shared out, from top to bottom: title, labels, body, labels below, ruler,
 * caption. Small drawings have fewer rows of labels and of caption.
 *
 * @param width of the drawing
 * @param height of the drawing
 */
record Zones(double width, double height) {
    private static final double MARGIN_MM = 2;
    private static final double SMALL_MM = 34;
    private static final double LEADER_MM = 2.4;

    /** Lettering of labels: from 6.5 pt in small drawings to 9 pt in large ones. */
    TextStyle lettering() {
        return TextStyle.ofPt(Math.max(6.5, Math.min(9, 6.5 + (width - 80) / 60))).condensed();
    }

    /** Lettering of the title. */
    TextStyle titleStyle() {
        return lettering().bold();
    }

    /** Lettering of the ruler and the caption. */
    TextStyle smallStyle() {
        return lettering().sized(Math.max(6.5, lettering().sizePt() - 1)).in(Ink.MUTED);
    }

    double left() {
        return MARGIN_MM;
    }

    double right() {
        return width - MARGIN_MM;
    }

    double titleBaseline() {
        return MARGIN_MM + TextMeasure.standard().ascentMm(titleStyle());
    }

    int labelRows() {
        return height < SMALL_MM ? 1 : 2;
    }

    int captionRows() {
        return height < SMALL_MM ? 1 : 2;
    }

    /** The lower edge of the labels above the body. */
    double labelsEdge() {
        return titleBaseline() + 1 + labelRows() * leading(lettering());
    }

    /** The room of the body. */
    Box body(boolean labelsBelow) {
        double top = labelsEdge() + LEADER_MM;
        double bottom = lowerLabelsEdge(labelsBelow) - (labelsBelow ? LEADER_MM : 1);
        return new Box(left(), top, right() - left(), Math.max(1, bottom - top));
    }

    /** The upper edge of the labels below the body. */
    double lowerLabelsEdge(boolean labelsBelow) {
        return rulerY() - (labelsBelow ? leading(lettering()) + 0.6 : 0);
    }

    double rulerY() {
        return captionTop() - Ruler.heightMm(smallStyle());
    }

    private double captionTop() {
        return height - MARGIN_MM / 2 - captionRows() * leading(smallStyle());
    }

    double captionBaseline() {
        return captionTop() + TextMeasure.standard().ascentMm(smallStyle());
    }

    static double leading(TextStyle style) {
        return TextMeasure.standard().leadingMm(style);
    }
}
