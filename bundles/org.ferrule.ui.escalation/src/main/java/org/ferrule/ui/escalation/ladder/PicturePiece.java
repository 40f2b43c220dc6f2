/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.ladder;

import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.ferrule.picture.Picture;
import org.ferrule.picture.Transform;
import org.ferrule.ui.picture.PicturePainting;

/**
 * A picture in its place.
 *
 * @param pixelsPerMm how large it is shown
 */
record PicturePiece(Picture picture, int x, int y, double pixelsPerMm) implements Piece {

    @Override
    public Rectangle bounds() {
        return new Rectangle(x, y, (int) Math.ceil(picture.widthMm() * pixelsPerMm),
                (int) Math.ceil(picture.heightMm() * pixelsPerMm));
    }

    @Override
    public void paint(GC gc) {
        PicturePainting painting = new PicturePainting(gc.getDevice());
        painting.paint(gc, picture.elements(),
                Transform.scaling(pixelsPerMm, pixelsPerMm).then(Transform.translation(x, y)));
        painting.dispose();
    }
}
