/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.clip;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerActivation;
import org.eclipse.ui.handlers.IHandlerService;
import org.ferrule.ui.picture.Focused;

/** Lets a control copy by key and menu while it has the focus; fields beside it go on copying what is selected in them. */
public final class CopyKey {

    private final Control control;
    private final Runnable copy;
    private IHandlerActivation activation;

    private CopyKey(Control control, Runnable copy) {
        this.control = control;
        this.copy = copy;
    }

    /** Copies from a control from now on. */
    public static void of(Control control, Runnable copy) {
        CopyKey key = new CopyKey(control, copy);
        control.addListener(SWT.FocusIn, event -> key.activate());
        control.addListener(SWT.FocusOut, event -> key.deactivate());
        control.addListener(SWT.Dispose, event -> key.deactivate());
    }

    private void activate() {
        if (activation == null) {
            activation = handlers().activateHandler(IWorkbenchCommandConstants.EDIT_COPY, new AbstractHandler() {
                @Override
                public Object execute(ExecutionEvent event) {
                    copy.run();
                    return null;
                }
            }, new Focused(control));
        }
    }

    private void deactivate() {
        if (activation != null) {
            handlers().deactivateHandler(activation);
            activation = null;
        }
    }

    private static IHandlerService handlers() {
        return PlatformUI.getWorkbench().getService(IHandlerService.class);
    }
}
