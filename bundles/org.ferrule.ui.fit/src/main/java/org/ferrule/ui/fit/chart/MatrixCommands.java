/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.chart;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.IHandler;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.IWorkbenchPartSite;
import org.eclipse.ui.contexts.IContextActivation;
import org.eclipse.ui.contexts.IContextService;
import org.eclipse.ui.handlers.IHandlerActivation;
import org.eclipse.ui.handlers.IHandlerService;

/**
 * What the matrix does when a command is given. Commands hold while the editor is active, so that they can be found by
 * their names; those that other controls know too, and the keys, hold while the matrix has the focus.
 */
final class MatrixCommands {

    private static final String CONTEXT = "org.ferrule.ui.fit.matrix";

    private final Map<String, Runnable> whileFocused = new LinkedHashMap<>();
    private final List<IHandlerActivation> activations = new ArrayList<>();
    private final IHandlerService handlers;
    private final IContextService contexts;
    private IContextActivation context;

    MatrixCommands(IWorkbenchPartSite site) {
        handlers = site.getService(IHandlerService.class);
        contexts = site.getService(IContextService.class);
    }

    /** Does something on a command, as long as the editor is active. */
    MatrixCommands on(String command, Runnable work) {
        handlers.activateHandler(command, handler(work));
        return this;
    }

    /** Does one thing and then another on a command, as long as the editor is active. */
    MatrixCommands on(String command, Runnable work, Runnable then) {
        return on(command, () -> {
            work.run();
            then.run();
        });
    }

    /** Does something on a command, as long as the matrix has the focus. */
    MatrixCommands whileFocused(String command, Runnable work) {
        whileFocused.put(command, work);
        return this;
    }

    private static IHandler handler(Runnable work) {
        return new AbstractHandler() {
            @Override
            public Object execute(ExecutionEvent event) {
                work.run();
                return null;
            }
        };
    }

    /** Follows the focus of the matrix. */
    void follow(Control matrix) {
        matrix.addListener(SWT.FocusIn, event -> activate());
        matrix.addListener(SWT.FocusOut, event -> deactivate());
        matrix.addListener(SWT.Dispose, event -> deactivate());
    }

    private void activate() {
        if (context == null) {
            context = contexts.activateContext(CONTEXT);
            whileFocused.forEach((command, work) -> activations.add(handlers.activateHandler(command, handler(work))));
        }
    }

    private void deactivate() {
        if (context != null) {
            contexts.deactivateContext(context);
            handlers.deactivateHandlers(activations);
            activations.clear();
            context = null;
        }
    }
}
