/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.ladder;

import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.graphics.TextLayout;
import org.eclipse.swt.widgets.Display;

/** Words that are broken into lines. */
final class TextPiece implements Piece {

    private final TextLayout layout;
    private final Color color;
    private final int x;
    private final int y;

    TextPiece(Display display, Font font, Color color, int x, int y, int width, String words) {
        this.color = color;
        this.x = x;
        this.y = y;
        layout = new TextLayout(display);
        layout.setFont(font);
        layout.setText(words);
        layout.setWidth(Math.max(1, width));
    }

    @Override
    public Rectangle bounds() {
        Rectangle size = layout.getBounds();
        return new Rectangle(x, y, size.width, size.height);
    }

    /** Returns the words. */
    String words() {
        return layout.getText();
    }

    /** Returns how wide the words would be on one line. */
    static int widthOf(Display display, Font font, String words) {
        TextLayout measure = new TextLayout(display);
        measure.setFont(font);
        measure.setText(words);
        int width = measure.getBounds().width;
        measure.dispose();
        return width;
    }

    @Override
    public void paint(GC gc) {
        gc.setForeground(color);
        layout.draw(gc, x, y);
    }

    @Override
    public void dispose() {
        layout.dispose();
    }
}
