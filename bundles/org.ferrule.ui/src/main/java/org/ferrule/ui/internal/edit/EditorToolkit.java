/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.edit;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.forms.widgets.FormToolkit;

/**
 * Makes the widgets of an editor. Buttons keep the platform's colour of letters: with one of their own, which forms give
 * them, GTK paints those that are disabled like the others.
 */
public final class EditorToolkit extends FormToolkit {

    private static final int WITH_SIGN = SWT.CHECK | SWT.RADIO;

    /** Creates a toolkit. */
    public EditorToolkit(Display display) {
        super(display);
    }

    @Override
    public Button createButton(Composite parent, String text, int style) {
        Color letters = getColors().getForeground();
        getColors().setForeground((style & WITH_SIGN) == 0 ? null : letters);
        Button button = super.createButton(parent, text, style);
        getColors().setForeground(letters);
        return button;
    }
}
