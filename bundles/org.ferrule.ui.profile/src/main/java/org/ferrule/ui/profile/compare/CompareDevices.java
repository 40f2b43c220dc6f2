/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.profile.compare;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.core.runtime.IPath;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.HandlerUtil;
import org.ferrule.ui.document.DeviceReference;
import org.ferrule.ui.edit.CompareProfiles;
import org.ferrule.ui.profile.ProfileIds;

/** Adds devices to the comparison: those that the command names, or else those that are selected. */
public class CompareDevices extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        String named = event.getParameter(CompareProfiles.DEVICES);
        List<DeviceReference> devices = named == null ? selected(event) : named.lines().map(CompareDevices::device)
                .flatMap(Optional::stream).toList();
        try {
            CompareView view = (CompareView) PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage()
                    .showView(ProfileIds.COMPARE_VIEW);
            view.add(devices);
            return null;
        } catch (PartInitException e) {
            throw new ExecutionException(e.getMessage(), e);
        }
    }

    private static List<DeviceReference> selected(ExecutionEvent event) {
        return Stream.of(HandlerUtil.getCurrentStructuredSelection(event).toArray())
                .map(element -> Adapters.adapt(element, DeviceReference[].class))
                .flatMap(devices -> devices == null ? Stream.empty() : Stream.of(devices)).toList();
    }

    private static Optional<DeviceReference> device(String line) {
        int mark = line.lastIndexOf('!');
        if (mark < 0) {
            return Optional.empty();
        }
        IFile file = ResourcesPlugin.getWorkspace().getRoot()
                .getFile(IPath.fromPortableString(line.substring(0, mark)));
        return Optional.of(new DeviceReference(file, line.substring(mark + 1)));
    }
}
