/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.look;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;

/**
 * Makes buttons with a box or a ring whose tick can be seen in every theme. A style sheet that gives them a ground alone
 * leaves GTK to paint a white tick on white.
 */
public final class Tick {

    private Tick() {
    }

    /** Makes a box that is ticked or not. */
    public static Button box(Composite parent, String text) {
        return button(parent, SWT.CHECK, text);
    }

    /** Makes one of several choices. */
    public static Button choice(Composite parent, String text) {
        return button(parent, SWT.RADIO, text);
    }

    private static Button button(Composite parent, int style, String text) {
        Button button = new Button(parent, style);
        button.setText(text);
        ThemeChange.text(button, Colours::text);
        return button;
    }
}
