/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.help;

import org.ferrule.chart.look.Scheme;
import org.ferrule.chart.look.Tone;
import org.ferrule.chart.look.VerdictLook;
import org.ferrule.picture.Picture;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.Point;
import org.ferrule.picture.TextStyle;
import org.ferrule.ui.help.HelpPicture;

/** The five looks of a verdict side by side, as in a matrix. */
public class VerdictsPicture implements HelpPicture {

    private static final double HEIGHT = 9;
    private static final double GAP = 1.2;
    private static final double GLYPH = 4.2;
    private static final double SIZE_PT = 8;
    private static final double BASE_LINE = 5.5;

    @Override
    public Picture draw(double widthMm) {
        PictureBuilder builder = new PictureBuilder();
        double cell = (widthMm + GAP) / VerdictLook.values().length;
        for (VerdictLook look : VerdictLook.values()) {
            cell(builder, look, look.ordinal() * cell, cell - GAP);
        }
        return builder.picture(widthMm, HEIGHT, "The looks of a verdict");
    }

    private static void cell(PictureBuilder builder, VerdictLook look, double left, double width) {
        Tone tone = look.tone(Scheme.LIGHT);
        builder.noPen().fill(tone.fill()).rect(left, 0, width, HEIGHT);
        look.drawGlyph(builder, new Point(left + GLYPH, HEIGHT / 2), GLYPH, Scheme.LIGHT);
        builder.lettering(TextStyle.ofPt(SIZE_PT).bold().in(tone.ink())).text(left + 2 * GLYPH, BASE_LINE,
                look.word());
    }
}
