/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.profile.growth;

import java.util.List;
import java.util.stream.Stream;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;
import org.ferrule.ui.document.DeviceReference;
import org.ferrule.ui.profile.ProfileIds;

/** Adds the devices that are selected to the growth curves. */
public class ShowGrowth extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        List<DeviceReference> devices = Stream.of(HandlerUtil.getCurrentStructuredSelection(event).toArray())
                .map(element -> Adapters.adapt(element, DeviceReference[].class))
                .flatMap(found -> found == null ? Stream.empty() : Stream.of(found)).toList();
        try {
            GrowthView view = (GrowthView) HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage()
                    .showView(ProfileIds.GROWTH_VIEW);
            view.add(devices);
            return null;
        } catch (PartInitException e) {
            throw new ExecutionException(e.getMessage(), e);
        }
    }
}
