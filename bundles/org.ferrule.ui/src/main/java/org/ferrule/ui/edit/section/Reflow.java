/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit.section;

import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.forms.IManagedForm;

/** Lays a page out anew when one of its controls needs more or less room. */
public final class Reflow {

    private Reflow() {
    }

    /** A column that is as high as before would not be laid out by the form alone. */
    public static void around(IManagedForm managed, Control changed) {
        changed.getShell().layout(new Control[] { changed });
        managed.reflow(true);
    }
}
