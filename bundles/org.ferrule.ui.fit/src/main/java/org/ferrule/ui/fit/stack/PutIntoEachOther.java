/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.stack;

import java.util.List;
import java.util.stream.Stream;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;
import org.ferrule.ui.document.DeviceReference;
import org.ferrule.ui.fit.FitIds;

/** Adds the selected devices to the stack, in the order in which they are selected, each inside the one before. */
public class PutIntoEachOther extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        List<DeviceReference> devices = Stream.of(HandlerUtil.getCurrentStructuredSelection(event).toArray())
                .map(element -> Adapters.adapt(element, DeviceReference[].class))
                .flatMap(found -> found == null ? Stream.empty() : Stream.of(found)).toList();
        try {
            StackView view = (StackView) HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage()
                    .showView(FitIds.STACK_VIEW);
            view.add(devices);
            return null;
        } catch (PartInitException e) {
            throw new ExecutionException(e.getMessage(), e);
        }
    }
}
