/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.ladder;

import java.util.function.Supplier;

import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.ferrule.picture.Picture;
import org.ferrule.picture.Transform;
import org.ferrule.ui.picture.PicturePainting;

/**
 * A picture in its place.
 *
 * @param print the same in the inks of print, in which it leaves the program
 * @param pixelsPerMm how large it is shown
 */
record PicturePiece(Picture picture, Supplier<Picture> print, int x, int y, double pixelsPerMm) implements Piece {

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
