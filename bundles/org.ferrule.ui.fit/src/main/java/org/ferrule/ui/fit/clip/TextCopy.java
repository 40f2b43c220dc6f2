/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.clip;

import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Control;

/** Puts texts into the clipboard. */
public final class TextCopy {

    private TextCopy() {
    }

    /**
     * Puts a text into the clipboard; an empty one leaves there what is there.
     *
     * @param control on whose display
     */
    public static void put(Control control, String text) {
        if (text.isEmpty()) {
            return;
        }
        Clipboard clipboard = new Clipboard(control.getDisplay());
        try {
            clipboard.setContents(new Object[] { text }, new Transfer[] { TextTransfer.getInstance() });
        } finally {
            clipboard.dispose();
        }
    }
}
