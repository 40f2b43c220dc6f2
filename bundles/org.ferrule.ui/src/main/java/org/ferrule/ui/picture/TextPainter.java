/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.picture;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.FontMetrics;
import org.eclipse.swt.graphics.GC;
import org.ferrule.picture.Point;
import org.ferrule.picture.Text;
import org.ferrule.picture.TextMeasure;
import org.ferrule.picture.Transform;

/** Paints lines of text in the system's font, made as wide as they were laid out. */
final class TextPainter {

    private static final int FLAGS = SWT.DRAW_TRANSPARENT;
    /** Below this difference letters keep their own width: it is the rounding of the toolkit's measure. */
    private static final double ROUNDING_PIXELS = 1;

    private final GC gc;
    private final TextFonts fonts;
    private final TextMeasure measure = TextMeasure.standard();

    TextPainter(GC gc, TextFonts fonts) {
        this.gc = gc;
        this.fonts = fonts;
    }

    void paint(Text text, Transform toScreen) {
        if (text.string().isBlank()) {
            return;
        }
        double scale = toScreen.scale();
        gc.setFont(fonts.font(text.style(), scale));
        gc.setForeground(ScreenInks.color(text.style().ink()));
        double wanted = measure.widthMm(text.string(), text.style()) * scale;
        int natural = gc.textExtent(text.string(), FLAGS).x;
        double stretch = Math.abs(wanted - natural) <= ROUNDING_PIXELS ? 1 : wanted / natural;
        Transform place = Transform.scaling(stretch, 1).then(Transform.rotation(text.rotationDegrees()))
                .then(turnOf(toScreen)).then(at(toScreen.apply(text.at())));
        draw(text, natural, place);
    }

    /** The turn of the coordinates, without their scale. */
    private static Transform turnOf(Transform toScreen) {
        return Transform.rotation(Math.toDegrees(Math.atan2(toScreen.b(), toScreen.a())));
    }

    private static Transform at(Point place) {
        return Transform.translation(place.xMm(), place.yMm());
    }

    private void draw(Text text, int width, Transform place) {
        org.eclipse.swt.graphics.Transform transform = new org.eclipse.swt.graphics.Transform(gc.getDevice(),
                (float) place.a(), (float) place.b(), (float) place.c(), (float) place.d(), (float) place.eMm(),
                (float) place.fMm());
        try {
            gc.setTransform(transform);
            FontMetrics metrics = gc.getFontMetrics();
            gc.drawText(text.string(), left(text.anchor(), width), -metrics.getAscent() - metrics.getLeading(), FLAGS);
        } finally {
            gc.setTransform(null);
            transform.dispose();
        }
    }

    private static int left(Text.Anchor anchor, int width) {
        return switch (anchor) {
            case START -> 0;
            case MIDDLE -> -width / 2;
            case END -> -width;
        };
    }
}
