/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.welcome;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.handlers.HandlerUtil;
import org.ferrule.ui.internal.project.ProjectOpening;

/** Opens the demo. */
public class OpenDemo extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        new ProjectOpening(HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage()).demo();
        return null;
    }
}
