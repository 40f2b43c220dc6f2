/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.answer;

import java.util.EnumMap;
import java.util.Map;

import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageGcDrawer;
import org.eclipse.swt.widgets.Control;
import org.ferrule.chart.look.Scheme;
import org.ferrule.chart.look.VerdictLook;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.Point;
import org.ferrule.picture.Transform;
import org.ferrule.ui.look.Colours;
import org.ferrule.ui.picture.PicturePainting;

/** The shapes of verdicts on their grounds, as small images; they go when their control goes. */
public final class VerdictImages {

    private static final int SIZE = 18;
    private static final double GLYPH_SHARE = 0.72;
    private static final double PIXELS_PER_MM = 96 / 25.4;

    private final Map<VerdictLook, Image> images = new EnumMap<>(VerdictLook.class);
    private final Control owner;
    private final int size;

    /** Creates images for a control. */
    public VerdictImages(Control owner) {
        this(owner, SIZE);
    }

    /** Creates images of a size in pixels. */
    public VerdictImages(Control owner, int size) {
        this.owner = owner;
        this.size = size;
        owner.addDisposeListener(event -> images.values().forEach(Image::dispose));
    }

    /** Returns the image of a look. */
    public Image of(VerdictLook look) {
        return images.computeIfAbsent(look, this::create);
    }

    private Image create(VerdictLook look) {
        ImageGcDrawer drawer = (gc, width, height) -> paint(gc, look);
        return new Image(owner.getDisplay(), drawer, size, size);
    }

    private void paint(GC gc, VerdictLook look) {
        Scheme scheme = Colours.dark() ? Scheme.DARK : Scheme.LIGHT;
        PictureBuilder builder = new PictureBuilder();
        builder.noPen().fill(look.tone(scheme).fill()).rect(0, 0, size / PIXELS_PER_MM, size / PIXELS_PER_MM);
        double middle = size / 2.0 / PIXELS_PER_MM;
        look.drawGlyph(builder, new Point(middle, middle), GLYPH_SHARE * size / PIXELS_PER_MM, scheme);
        PicturePainting painting = new PicturePainting(owner.getDisplay());
        painting.paint(gc, builder.elements(), Transform.scaling(PIXELS_PER_MM, PIXELS_PER_MM));
        painting.dispose();
    }
}
