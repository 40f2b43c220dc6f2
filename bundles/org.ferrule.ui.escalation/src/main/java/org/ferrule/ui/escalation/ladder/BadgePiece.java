/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.ladder;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;

/**
 * The number of a step: in a circle when something is tried, in a square when something is brought in.
 *
 * @param next whether it is the step to be done next
 */
record BadgePiece(Rectangle bounds, Font font, int number, boolean square, boolean next) implements Piece {

    @Override
    public void paint(GC gc) {
        gc.setAntialias(SWT.ON);
        gc.setLineWidth(2);
        gc.setLineStyle(SWT.LINE_SOLID);
        gc.setBackground(next ? LadderInk.NEXT.color() : LadderInk.CARD.color());
        gc.setForeground(next ? LadderInk.NEXT.color() : LadderInk.MUTED.color());
        if (square) {
            gc.fillRectangle(bounds);
            gc.drawRectangle(bounds.x, bounds.y, bounds.width - 1, bounds.height - 1);
        } else {
            gc.fillOval(bounds.x, bounds.y, bounds.width, bounds.height);
            gc.drawOval(bounds.x, bounds.y, bounds.width - 1, bounds.height - 1);
        }
        gc.setForeground(next ? LadderInk.ON_NEXT.color() : LadderInk.TEXT.color());
        gc.setFont(font);
        String words = Integer.toString(number);
        Point size = gc.textExtent(words);
        gc.drawText(words, bounds.x + (bounds.width - size.x) / 2, bounds.y + (bounds.height - size.y) / 2,
                SWT.DRAW_TRANSPARENT);
    }
}
