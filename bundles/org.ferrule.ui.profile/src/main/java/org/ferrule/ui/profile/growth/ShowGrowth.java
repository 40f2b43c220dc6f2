/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.profile.growth;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;
import org.ferrule.ui.fit.follow.AskedDevices;
import org.ferrule.ui.profile.ProfileIds;

/** Adds balloons to the growth curves: those that the command names, or else those that are selected. */
public class ShowGrowth extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        try {
            GrowthView view = (GrowthView) HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage()
                    .showView(ProfileIds.GROWTH_VIEW);
            view.add(AskedDevices.of(event));
            return null;
        } catch (PartInitException e) {
            throw new ExecutionException(e.getMessage(), e);
        }
    }
}
