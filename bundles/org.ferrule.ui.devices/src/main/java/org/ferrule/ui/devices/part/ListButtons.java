/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.part;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.forms.widgets.FormToolkit;

/** Buttons one below the other, at the side of a list. */
public final class ListButtons {

    private static final int WIDTH = 92;

    private final FormToolkit toolkit;
    private final Composite column;
    private final List<Button> buttons = new ArrayList<>();

    /** Creates a column without buttons. */
    public ListButtons(FormToolkit toolkit, Composite parent) {
        this.toolkit = toolkit;
        column = toolkit.createComposite(parent);
        GridLayoutFactory.fillDefaults().spacing(0, 3).applyTo(column);
        GridDataFactory.fillDefaults().applyTo(column);
    }

    /** Adds a button. */
    public ListButtons add(String text, Runnable action) {
        Button button = toolkit.createButton(column, text, SWT.PUSH);
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> action.run()));
        GridDataFactory.fillDefaults().hint(WIDTH, SWT.DEFAULT).applyTo(button);
        buttons.add(button);
        return this;
    }

    /** Enables the buttons, or not, in their order. */
    public void enable(boolean... enabled) {
        for (int i = 0; i < enabled.length; i++) {
            buttons.get(i).setEnabled(enabled[i]);
        }
    }
}
