/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.picture;

import java.util.List;
import java.util.Objects;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.ferrule.picture.Path;
import org.ferrule.picture.Picture;
import org.ferrule.picture.Transform;

/** Emphasizes the groups of a picture that have a name. */
final class Highlight {

    private static final int ALPHA = 110;
    private static final int OPAQUE = 255;
    private static final int PIXELS = 4;

    private String id;

    /** Emphasizes the groups with the name, or none for null; tells whether that is something else than before. */
    boolean change(String other) {
        boolean changed = !Objects.equals(id, other);
        id = other;
        return changed;
    }

    void paint(GC gc, Picture picture, Transform toScreen) {
        if (id == null) {
            return;
        }
        gc.setForeground(gc.getDevice().getSystemColor(SWT.COLOR_LIST_SELECTION));
        gc.setLineWidth(PIXELS);
        gc.setLineStyle(SWT.LINE_SOLID);
        gc.setAlpha(ALPHA);
        outlines(picture, id, toScreen).forEach(outline -> {
            org.eclipse.swt.graphics.Path path = ScreenPath.of(gc.getDevice(), outline);
            gc.drawPath(path);
            path.dispose();
        });
        gc.setAlpha(OPAQUE);
    }

    /** The outlines of the groups with a name, on the screen. */
    static List<Path> outlines(Picture picture, String id, Transform toScreen) {
        return Outlines.of(picture, id).stream().map(path -> path.transformed(toScreen)).toList();
    }
}
