/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.look;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Composite;

/** A row of controls below a grid layout: it breaks into as many lines as its width demands. */
public final class WrapRow {

    private final Composite row;

    /** Creates an empty row with so many points between its controls. */
    public WrapRow(Composite parent, int spacing) {
        row = new Composite(parent, SWT.NONE);
        row.setBackground(parent.getBackground());
        RowLayout layout = new RowLayout(SWT.HORIZONTAL);
        layout.wrap = true;
        layout.spacing = spacing;
        layout.marginLeft = 0;
        layout.marginRight = 0;
        layout.marginTop = 0;
        layout.marginBottom = 0;
        row.setLayout(layout);
        GridDataFactory.fillDefaults().grab(true, false).hint(200, SWT.DEFAULT).applyTo(row);
        row.addListener(SWT.Resize, event -> makeRoom());
    }

    private void makeRoom() {
        int width = row.getSize().x;
        int height = row.computeSize(width, SWT.DEFAULT).y;
        if (width > 0 && row.getSize().y != height) {
            GridDataFactory.fillDefaults().grab(true, false).hint(200, height).applyTo(row);
            row.requestLayout();
        }
    }

    /** Lays the controls out again: some of them have other texts. */
    public void refresh() {
        row.layout(true, true);
        makeRoom();
    }

    /** Returns what the controls are to be created in. */
    public Composite control() {
        return row;
    }
}
