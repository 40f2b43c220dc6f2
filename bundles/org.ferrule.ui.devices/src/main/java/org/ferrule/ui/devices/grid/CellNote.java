/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.grid;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.ferrule.ui.look.Colours;

/** Says something about a cell, right below it: what is typed amounts to, or why it cannot be read. */
final class CellNote {

    private static final int MOST_WIDTH = 420;

    private final Composite box;
    private final Label words;

    CellNote(Composite table) {
        box = new Composite(table, SWT.BORDER);
        GridLayoutFactory.fillDefaults().margins(6, 3).applyTo(box);
        words = new Label(box, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(words);
        box.setVisible(false);
    }

    void error(Rectangle cell, String text) {
        show(cell, text, Colours.error());
    }

    void tell(Rectangle cell, String text) {
        show(cell, text, Colours.muted());
    }

    private void show(Rectangle cell, String text, Color colour) {
        if (text.isEmpty()) {
            hide();
            return;
        }
        box.setBackground(Colours.paper());
        words.setBackground(Colours.paper());
        words.setForeground(colour);
        words.setText(text.replace("&", "&&"));
        Rectangle area = box.getParent().getClientArea();
        Point size = box.computeSize(SWT.DEFAULT, SWT.DEFAULT);
        if (size.x > Math.min(MOST_WIDTH, area.width)) {
            size = box.computeSize(Math.min(MOST_WIDTH, area.width), SWT.DEFAULT);
        }
        int below = cell.y + cell.height + 1;
        int y = below + size.y > area.height ? cell.y - size.y - 1 : below;
        box.setBounds(Math.max(0, Math.min(cell.x, area.width - size.x)), y, size.x, size.y);
        box.layout();
        box.moveAbove(null);
        box.setVisible(true);
    }

    void hide() {
        box.setVisible(false);
    }

    /** Returns what is said; empty for nothing. */
    String text() {
        return box.isVisible() ? words.getText().replace("&&", "&") : "";
    }
}
