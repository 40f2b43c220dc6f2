/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.ladder;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;

/**
 * A box behind other pieces.
 *
 * @param ground what it is filled with
 * @param edge its outline
 * @param bar a bar along its left edge, or null
 */
record BoxPiece(Rectangle bounds, Color ground, Color edge, Color bar) implements Piece {

    private static final int ROUND = 8;
    private static final int BAR = 6;

    @Override
    public void paint(GC gc) {
        gc.setAntialias(SWT.ON);
        gc.setBackground(ground);
        gc.fillRoundRectangle(bounds.x, bounds.y, bounds.width, bounds.height, ROUND, ROUND);
        gc.setForeground(edge);
        gc.setLineWidth(1);
        gc.setLineStyle(SWT.LINE_SOLID);
        gc.drawRoundRectangle(bounds.x, bounds.y, bounds.width - 1, bounds.height - 1, ROUND, ROUND);
        if (bar != null) {
            gc.setBackground(bar);
            gc.fillRoundRectangle(bounds.x, bounds.y, BAR, bounds.height, ROUND / 2, ROUND / 2);
        }
    }
}
