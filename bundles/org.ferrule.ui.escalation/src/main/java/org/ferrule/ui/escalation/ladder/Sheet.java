/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.ladder;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.ferrule.picture.Picture;

/**
 * Pieces at their places, to be painted and disposed of.
 *
 * @param pieces in the order in which they are painted
 * @param steps where the steps of the plan stand, by their numbers
 * @param folds where the headings stand that fold and unfold a part, by its name
 * @param height in pixels
 */
record Sheet(List<Piece> pieces, Map<Integer, Rectangle> steps, Map<String, Rectangle> folds, int height) {

    static final Sheet EMPTY = new Sheet(List.of(), Map.of(), Map.of(), 0);

    Sheet {
        pieces = List.copyOf(pieces);
        steps = Map.copyOf(steps);
        folds = Map.copyOf(folds);
    }

    /** Paints what can be seen. */
    void paint(GC gc) {
        Rectangle seen = gc.getClipping();
        pieces.stream().filter(piece -> piece.bounds().intersects(seen)).forEach(piece -> piece.paint(gc));
    }

    /** Returns all words, one piece on a line. */
    String words() {
        return pieces.stream().filter(TextPiece.class::isInstance).map(piece -> ((TextPiece) piece).words())
                .collect(Collectors.joining("\n"));
    }

    /** Returns the picture of a step as it leaves the program; nothing where it has none. */
    Optional<Picture> picture(int step) {
        Rectangle card = steps.get(step);
        return pieces.stream().filter(piece -> card != null && piece.bounds().intersects(card))
                .filter(PicturePiece.class::isInstance).map(piece -> ((PicturePiece) piece).print().get())
                .findFirst();
    }

    void dispose() {
        pieces.forEach(Piece::dispose);
    }
}
