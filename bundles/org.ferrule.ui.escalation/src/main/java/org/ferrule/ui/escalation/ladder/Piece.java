/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.ladder;

import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;

/** Something on a sheet that paints itself at its place. */
interface Piece {

    /** Returns where it stands on the sheet. */
    Rectangle bounds();

    /** Paints it. */
    void paint(GC gc);

    /** Gives back what it holds. */
    default void dispose() {
        // most hold nothing
    }
}
