/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.picture;

import java.util.List;

import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Device;
import org.eclipse.swt.graphics.GC;
import org.ferrule.picture.Element;
import org.ferrule.picture.Ink;
import org.ferrule.picture.Transform;

/** Paints elements of pictures outside of canvases, such as in the cells of a table. */
public final class PicturePainting {

    private final TextFonts fonts;

    /** Creates a painting; to be disposed of. */
    public PicturePainting(Device device) {
        fonts = new TextFonts(device);
    }

    /**
     * Paints elements.
     *
     * @param toScreen from the millimetres of the picture to the coordinates of the graphics
     */
    public void paint(GC gc, List<Element> elements, Transform toScreen) {
        new GcPainter(gc, fonts, toScreen).paint(elements);
    }

    /** Returns the colour of an ink on the screen, which nobody needs to dispose of. */
    public static Color color(Ink ink) {
        return ScreenInks.color(ink);
    }

    /** Gives back the fonts. */
    public void dispose() {
        fonts.dispose();
    }
}
