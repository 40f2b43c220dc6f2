/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.picture;

import java.util.HashMap;
import java.util.Map;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Device;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.FontData;
import org.eclipse.swt.graphics.GC;
import org.ferrule.picture.FontFace;
import org.ferrule.picture.TextMeasure;
import org.ferrule.picture.TextStyle;

/**
 * The system's font in the sizes of a picture. A size is chosen by how wide text runs, not by nominal points, so that
 * pictures keep their layout whatever the system's font and resolution are.
 */
final class TextFonts {

    private static final String SPECIMEN = "Outer diameter 0123456789 mm, effective length";
    private static final int SPECIMEN_PT = 40;

    private final Device device;
    private final FontData system;
    private final Map<Size, Font> fonts = new HashMap<>();
    private final double pixelsPerPt;
    private final TextMeasure measure = TextMeasure.standard();

    private record Size(int tenthsOfPt, boolean bold) {
    }

    TextFonts(Device device) {
        this.device = device;
        this.system = device.getSystemFont().getFontData()[0];
        this.pixelsPerPt = (double) width(font(new Size(10 * SPECIMEN_PT, false)), SPECIMEN) / SPECIMEN_PT;
    }

    private int width(Font font, String text) {
        GC gc = new GC(device);
        try {
            gc.setFont(font);
            return gc.textExtent(text).x;
        } finally {
            gc.dispose();
        }
    }

    /** Returns the pixels for a millimetre at which text of a style is as large as the system's own. */
    double pixelsPerMmFor(TextStyle style) {
        return pixelsPerPt * system.height / measure.widthMm(SPECIMEN, style.in(FontFace.REGULAR));
    }

    /** Returns the font for a style at so many pixels for a millimetre; it is not to be disposed of. */
    Font font(TextStyle style, double pixelsPerMm) {
        double pixels = measure.widthMm(SPECIMEN, style.in(FontFace.REGULAR)) * pixelsPerMm;
        int tenths = Math.max(10, (int) Math.round(10 * pixels / pixelsPerPt));
        return font(new Size(tenths, style.face().isBold()));
    }

    private Font font(Size size) {
        return fonts.computeIfAbsent(size, this::create);
    }

    private Font create(Size size) {
        FontData data = new FontData(system.getName(), SPECIMEN_PT, size.bold ? SWT.BOLD : SWT.NORMAL);
        data.height = size.tenthsOfPt / 10f;
        return new Font(device, data);
    }

    void dispose() {
        fonts.values().forEach(Font::dispose);
        fonts.clear();
    }
}
