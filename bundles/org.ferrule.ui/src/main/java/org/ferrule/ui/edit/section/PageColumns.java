/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit.section;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.forms.IManagedForm;

/** Two columns of sections side by side; one below the other where the page is too narrow for both. */
public final class PageColumns {

    private static final int BOTH = 900;
    private static final int LEAST_COLUMN = 300;

    private final IManagedForm managed;
    private final Composite body;
    private final GridLayout layout;

    /** Gives the body of the form its layout; columns are to be added from left to right. */
    public PageColumns(IManagedForm managed) {
        this.managed = managed;
        body = managed.getForm().getBody();
        GridLayoutFactory.fillDefaults().numColumns(2).equalWidth(true).margins(12, 8).spacing(20, 10).applyTo(body);
        layout = (GridLayout) body.getLayout();
        managed.getForm().addListener(SWT.Resize, event -> fold());
    }

    private void fold() {
        int columns = managed.getForm().getClientArea().width < BOTH ? 1 : 2;
        if (columns != layout.numColumns) {
            layout.numColumns = columns;
            managed.reflow(true);
        }
    }

    /** Adds a column and returns where its sections go. */
    public Composite add() {
        Composite column = managed.getToolkit().createComposite(body);
        GridLayoutFactory.fillDefaults().spacing(0, 10).applyTo(column);
        GridDataFactory.fillDefaults().grab(true, true).hint(LEAST_COLUMN, SWT.DEFAULT).applyTo(column);
        return column;
    }
}
