/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.chart;

import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.ferrule.ui.fit.matrix.MatrixTable;

/** Copies the selected cells. */
final class CellCopy {

    private CellCopy() {
    }

    /** Puts the selected cells into the clipboard, with tabs between. */
    static void copy(MatrixTable table) {
        String text = table.selectedText();
        if (text.isEmpty()) {
            return;
        }
        Clipboard clipboard = new Clipboard(table.control().getDisplay());
        try {
            clipboard.setContents(new Object[] { text }, new Transfer[] { TextTransfer.getInstance() });
        } finally {
            clipboard.dispose();
        }
    }
}
