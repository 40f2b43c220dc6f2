/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.chart;

import org.ferrule.ui.fit.clip.TextCopy;
import org.ferrule.ui.fit.matrix.MatrixTable;

/** Copies the selected cells. */
final class CellCopy {

    private CellCopy() {
    }

    /** Puts the selected cells into the clipboard, with tabs between. */
    static void copy(MatrixTable table) {
        TextCopy.put(table.control(), table.selectedText());
    }
}
