/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.ladder;

import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.ferrule.chart.look.Scheme;
import org.ferrule.chart.look.VerdictLook;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.Point;
import org.ferrule.picture.Transform;
import org.ferrule.ui.look.Colours;
import org.ferrule.ui.picture.PicturePainting;

/** The shape of a verdict on its ground, as charts have it. */
record GlyphPiece(VerdictLook look, int x, int y, int size) implements Piece {

    private static final double GLYPH = 0.72;

    @Override
    public Rectangle bounds() {
        return new Rectangle(x, y, size, size);
    }

    @Override
    public void paint(GC gc) {
        Scheme scheme = Colours.dark() ? Scheme.DARK : Scheme.LIGHT;
        PictureBuilder builder = new PictureBuilder();
        builder.noPen().fill(look.tone(scheme).fill()).rect(0, 0, size, size);
        look.drawGlyph(builder, new Point(size / 2.0, size / 2.0), size * GLYPH, scheme);
        PicturePainting painting = new PicturePainting(gc.getDevice());
        painting.paint(gc, builder.elements(), Transform.translation(x, y));
        painting.dispose();
    }
}
