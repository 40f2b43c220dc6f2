/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.part;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.IHandler;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.eclipse.ui.handlers.IHandlerActivation;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.services.IServiceLocator;

/** Lets the workbench's Delete command, with its key and its menu entry, work on a control while it has the focus. */
public final class DeleteKey {

    private final IHandlerService handlers;
    private final IHandler handler;
    private IHandlerActivation activation;

    private DeleteKey(IServiceLocator services, Runnable action) {
        handlers = services.getService(IHandlerService.class);
        handler = new AbstractHandler() {
            @Override
            public Object execute(ExecutionEvent event) {
                action.run();
                return null;
            }
        };
    }

    /**
     * Binds the command to an action.
     *
     * @param services of the part on which the control stands
     */
    public static void bind(Control control, IServiceLocator services, Runnable action) {
        DeleteKey key = new DeleteKey(services, action);
        control.addListener(SWT.FocusIn, event -> key.activate());
        control.addListener(SWT.FocusOut, event -> key.deactivate());
        control.addListener(SWT.Dispose, event -> key.deactivate());
    }

    private void activate() {
        deactivate();
        activation = handlers.activateHandler(IWorkbenchCommandConstants.EDIT_DELETE, handler);
    }

    private void deactivate() {
        if (activation != null) {
            handlers.deactivateHandler(activation);
            activation = null;
        }
    }
}
