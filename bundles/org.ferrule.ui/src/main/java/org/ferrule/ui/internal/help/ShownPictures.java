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
import org.eclipse.swt.graphics.GlyphMetrics;
import org.ferrule.picture.Picture;
import org.ferrule.picture.Transform;
import org.ferrule.ui.help.HelpPictures;
import org.ferrule.ui.picture.PicturePainting;

/** Pictures between the lines of a text widget: each stands in place of one character. */
final class ShownPictures {

    /** The character that a picture stands in place of (Unicode: object replacement character). */
    static final String PLACE = "\uFFFC";

    private static final double WIDTH_MM = 150;
    private static final double POINTS_PER_MM = 96 / 25.4;

    private final Map<Integer, Picture> pictures = new HashMap<>();
    private final PicturePainting painting;

    ShownPictures(StyledText widget) {
        painting = new PicturePainting(widget.getDisplay());
        widget.addPaintObjectListener(this::paint);
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
            Picture picture = HelpPictures.draw(id, WIDTH_MM);
            StyleRange range = new StyleRange();
            range.start = offset;
            range.length = PLACE.length();
            range.metrics = new GlyphMetrics((int) Math.ceil(picture.heightMm() * POINTS_PER_MM), 0,
                    (int) Math.ceil(picture.widthMm() * POINTS_PER_MM));
            pictures.put(offset, picture);
            return range;
        } catch (CoreException e) {
            ILog.of(ShownPictures.class).log(e.getStatus());
            return null;
        }
    }

    private void paint(PaintObjectEvent event) {
        Picture picture = pictures.get(event.style.start);
        if (picture != null) {
            int top = event.y + event.ascent - event.style.metrics.ascent;
            painting.paint(event.gc, picture.elements(), Transform.scaling(POINTS_PER_MM, POINTS_PER_MM)
                    .then(Transform.translation(event.x, top)));
        }
    }
}
