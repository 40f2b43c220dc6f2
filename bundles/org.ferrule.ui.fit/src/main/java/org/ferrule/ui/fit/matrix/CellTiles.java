/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;

import org.eclipse.swt.graphics.Device;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageGcDrawer;
import org.ferrule.chart.look.Scheme;
import org.ferrule.chart.look.SideMark;
import org.ferrule.chart.look.Tone;
import org.ferrule.chart.look.VerdictLook;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.Point;
import org.ferrule.picture.Transform;
import org.ferrule.ui.picture.PicturePainting;

/** The grounds of cells with shape and marks, painted once for each look. */
final class CellTiles {

    /** So that hatches look as they do on paper. */
    private static final double PIXELS_PER_MM = 96 / 25.4;
    private static final int FAINT_ALPHA = 190;

    /** What a tile looks like. */
    record Look(VerdictLook verdict, Set<SideMark> marks, boolean faint, Scheme scheme, int width, int height) {
    }

    private final Map<Look, Image> tiles = new HashMap<>();
    private final Device device;
    private final CellMeasures measures;
    private final boolean words;

    CellTiles(Device device, CellMeasures measures, boolean words) {
        this.device = device;
        this.measures = measures;
        this.words = words;
    }

    Image tile(Look look) {
        return tiles.computeIfAbsent(look, this::create);
    }

    private Image create(Look look) {
        ImageGcDrawer drawer = (gc, width, height) -> paint(gc, look);
        return new Image(device, drawer, look.width(), look.height());
    }

    private void paint(GC gc, Look look) {
        PicturePainting painting = new PicturePainting(device);
        PictureBuilder builder = new PictureBuilder();
        Tone tone = look.verdict().tone(look.scheme());
        builder.noPen().fill(tone.fill()).rect(0, 0, mm(look.width()), mm(look.height()));
        look.verdict().drawGlyph(builder, glyphCentre(look), mm(measures.glyph()), look.scheme());
        drawMarks(builder, look, tone);
        painting.paint(gc, builder.elements(), Transform.scaling(PIXELS_PER_MM, PIXELS_PER_MM));
        painting.dispose();
        if (look.faint()) {
            veil(gc, look);
        }
    }

    private static void veil(GC gc, Look look) {
        gc.setAlpha(FAINT_ALPHA);
        gc.setBackground(HeadColours.paper());
        gc.fillRectangle(0, 0, look.width(), look.height());
    }

    private Point glyphCentre(Look look) {
        double y = words ? CellMeasures.EDGE + measures.line() / 2.0 : look.height() / 2.0;
        return new Point(mm(CellMeasures.PADDING + measures.glyph() / 2.0), mm(y));
    }

    /** From the right: below the word, or in the upper corner where there is no word. */
    private void drawMarks(PictureBuilder builder, Look look, Tone tone) {
        double size = words ? measures.mark() : measures.mark() * 0.7;
        double x = look.width() - size / 2 - 3;
        double y = words ? look.height() - CellMeasures.EDGE - measures.line() / 2.0 : size / 2 + 2;
        for (SideMark mark : look.marks()) {
            mark.glyph().draw(builder, new Point(mm(x), mm(y)), mm(size), tone.ink());
            x -= size + 2;
        }
    }

    private static double mm(double pixels) {
        return pixels / PIXELS_PER_MM;
    }

    void dispose() {
        tiles.values().forEach(Image::dispose);
        tiles.clear();
    }
}
