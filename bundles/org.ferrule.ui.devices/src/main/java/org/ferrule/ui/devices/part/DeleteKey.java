/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.part;

import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.eclipse.ui.services.IServiceLocator;
import org.ferrule.ui.devices.table.FocusCommand;

/** Lets the workbench's Delete command, with its key and its menu entry, work on a control while it has the focus. */
public final class DeleteKey {

    private DeleteKey() {
    }

    /**
     * Binds the command to an action.
     *
     * @param services of the part on which the control stands
     */
    public static void bind(Control control, IServiceLocator services, Runnable action) {
        FocusCommand.bind(control, services, IWorkbenchCommandConstants.EDIT_DELETE, action);
    }
}
