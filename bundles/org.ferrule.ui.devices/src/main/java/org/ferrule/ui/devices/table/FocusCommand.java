/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.table;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.IHandler;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.handlers.IHandlerActivation;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.services.IServiceLocator;

/** Lets a command of the workbench, with its key and its menu entry, work on a control while that has the focus. */
public final class FocusCommand {

    private final IHandlerService handlers;
    private final String command;
    private final IHandler handler;
    private IHandlerActivation activation;

    private FocusCommand(IServiceLocator services, String command, Runnable action) {
        this.command = command;
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
     * Binds a command to an action.
     *
     * @param services of the part on which the control stands
     * @param command the id of the command
     */
    public static void bind(Control control, IServiceLocator services, String command, Runnable action) {
        FocusCommand bound = new FocusCommand(services, command, action);
        control.addListener(SWT.FocusIn, event -> bound.activate());
        control.addListener(SWT.FocusOut, event -> bound.deactivate());
        control.addListener(SWT.Dispose, event -> bound.deactivate());
    }

    private void activate() {
        deactivate();
        activation = handlers.activateHandler(command, handler);
    }

    private void deactivate() {
        if (activation != null) {
            handlers.deactivateHandler(activation);
            activation = null;
        }
    }
}
