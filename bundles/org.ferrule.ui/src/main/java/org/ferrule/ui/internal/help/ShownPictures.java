/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.help;

import java.util.HashMap;
import java.util.Map;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.swt.custom.PaintObjectEvent;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.events.ControlListener;
import org.eclipse.swt.graphics.GlyphMetrics;
import org.ferrule.picture.Picture;
import org.ferrule.picture.Transform;
import org.ferrule.ui.help.HelpPictures;
import org.ferrule.ui.picture.PicturePainting;

/**
 * Pictures between the lines of a text widget: each stands in place of one character, as wide as the lines as far as its
 * lettering goes with theirs then.
 */
final class ShownPictures {

    /** The character that a picture stands in place of (Unicode: object replacement character). */
    static final String PLACE = "\uFFFC";

    private static final double WIDTH_MM = 150;
    private static final double POINTS_PER_MM = 96 / 25.4;
    private static final double SMALLEST = 0.7;
    private static final double LARGEST = 1.2;

    private final StyledText widget;
    private final Map<Integer, Picture> pictures = new HashMap<>();
    private final PicturePainting painting;
    private double pointsPerMm = POINTS_PER_MM;

    ShownPictures(StyledText widget) {
        this.widget = widget;
        painting = new PicturePainting(widget.getDisplay());
        widget.addPaintObjectListener(this::paint);
        widget.addControlListener(ControlListener.controlResizedAdapter(event -> fit()));
        widget.addDisposeListener(event -> painting.dispose());
    }

    /** Forgets all pictures. */
    void clear() {
        pictures.clear();
    }

    /**
     * Draws a picture that will stand at an offset.
     *
     * @return the range that makes room for it; null if it cannot be drawn, and then its words should stand there
     */
    StyleRange draw(String id, int offset) {
        try {
            pictures.put(offset, HelpPictures.draw(id, WIDTH_MM));
            return room(offset);
        } catch (CoreException e) {
            ILog.of(ShownPictures.class).log(e.getStatus());
            return null;
        }
    }

    private StyleRange room(int offset) {
        Picture picture = pictures.get(offset);
        StyleRange range = new StyleRange();
        range.start = offset;
        range.length = PLACE.length();
        range.metrics = new GlyphMetrics((int) Math.ceil(picture.heightMm() * pointsPerMm), 0,
                (int) Math.floor(picture.widthMm() * pointsPerMm));
        return range;
    }

    /** Makes pictures as wide as the lines are now. */
    private void fit() {
        int lines = widget.getClientArea().width - widget.getLeftMargin() - widget.getRightMargin();
        double fitting = Math.max(SMALLEST * POINTS_PER_MM, Math.min(LARGEST * POINTS_PER_MM, lines / WIDTH_MM));
        if (fitting != pointsPerMm) {
            pointsPerMm = fitting;
            pictures.keySet().forEach(offset -> widget.setStyleRange(room(offset)));
        }
    }

    private void paint(PaintObjectEvent event) {
        Picture picture = pictures.get(event.style.start);
        if (picture != null) {
            int top = event.y + event.ascent - event.style.metrics.ascent;
            painting.paint(event.gc, picture.elements(), Transform.scaling(pointsPerMm, pointsPerMm)
                    .then(Transform.translation(event.x, top)));
        }
    }
}
