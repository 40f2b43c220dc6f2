/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.follow;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.core.runtime.IPath;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.ui.handlers.HandlerUtil;
import org.ferrule.ui.document.DeviceReference;
import org.ferrule.ui.edit.DeviceCommand;

/** The devices that something is asked about. */
public final class AskedDevices {

    private AskedDevices() {
    }

    /** Returns the devices that a command names, or else those that are selected. */
    public static List<DeviceReference> of(ExecutionEvent event) {
        String named = event.getParameter(DeviceCommand.DEVICES);
        return named == null ? of(HandlerUtil.getCurrentStructuredSelection(event))
                : named.lines().map(AskedDevices::device).flatMap(Optional::stream).toList();
    }

    /** Returns the devices among what is selected, and those of a line that is. */
    public static List<DeviceReference> of(IStructuredSelection selection) {
        return Stream.of(selection.toArray()).flatMap(AskedDevices::devices).toList();
    }

    private static Stream<DeviceReference> devices(Object element) {
        if (element instanceof DeviceReference device) {
            return Stream.of(device);
        }
        DeviceReference[] devices = Adapters.adapt(element, DeviceReference[].class);
        return devices == null ? Stream.empty() : Stream.of(devices);
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
