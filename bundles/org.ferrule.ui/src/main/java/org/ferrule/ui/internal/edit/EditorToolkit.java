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
import org.ferrule.ui.look.Colours;

/**
 * Makes the widgets of an editor. Buttons keep the platform's colour of letters: with one of their own, which forms give
 * them, GTK paints those that are disabled like the others. So it does with those that the dark theme's style sheet has
 * coloured, which is why they get paler letters there while they are disabled.
 */
public final class EditorToolkit extends FormToolkit {

    private static final int WITH_SIGN = SWT.CHECK | SWT.RADIO;
    private static final int PALE_PERCENT = 40;
    private static final String LETTERS = "org.ferrule.ui.letters";

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
        if ((style & WITH_SIGN) == 0) {
            button.addListener(SWT.Paint, event -> event.display.asyncExec(() -> showWhetherPressable(button)));
        }
        return button;
    }

    /** No event tells that a button is enabled or disabled but that it is painted. */
    private static void showWhetherPressable(Button button) {
        if (button.isDisposed()) {
            return;
        }
        Color letters = letters(button);
        if (letters == null ? button.getData(LETTERS) != null : !letters.equals(button.getForeground())) {
            button.setForeground(letters);
            button.setData(LETTERS, letters);
        }
    }

    private static Color letters(Button button) {
        if (!Colours.dark()) {
            return null;
        }
        return button.isEnabled() ? Colours.text() : Colours.tinted(Colours.text(), PALE_PERCENT);
    }
}
