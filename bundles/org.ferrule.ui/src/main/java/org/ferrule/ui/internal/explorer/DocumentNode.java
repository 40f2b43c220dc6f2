/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.explorer;

import java.util.Objects;
import java.util.stream.Stream;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.PlatformObject;
import org.eclipse.emf.ecore.EObject;
import org.ferrule.model.Device;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.DeviceLine;
import org.ferrule.model.ElementPath;
import org.ferrule.ui.document.DeviceReference;

/**
 * A line or a device inside its file. Two nodes are equal if they name the same place, so that what is open in the tree
 * stays open when the document is read anew.
 */
final class DocumentNode extends PlatformObject {

    private final IFile file;
    private final String path;
    private final EObject object;

    DocumentNode(IFile file, EObject object) {
        this.file = file;
        this.path = ElementPath.of(object);
        this.object = object;
    }

    IFile file() {
        return file;
    }

    String path() {
        return path;
    }

    /** Returns the object as it was read; it must not be changed. */
    EObject object() {
        return object;
    }

    /** Can be taken for its device, or for the devices of its line. */
    @Override
    public <T> T getAdapter(Class<T> adapter) {
        return adapter == DeviceReference[].class ? adapter.cast(devices()) : super.getAdapter(adapter);
    }

    private DeviceReference[] devices() {
        Stream<Device> devices = object instanceof DeviceLine line
                ? ((DeviceLibrary) line.eContainer()).getDevices().stream()
                        .filter(device -> line.getId() != null && line.getId().equals(device.getLine()))
                : Stream.of((Device) object);
        return devices.filter(device -> device.getId() != null)
                .map(device -> new DeviceReference(file, device.getId())).toArray(DeviceReference[]::new);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof DocumentNode node && node.file.equals(file) && node.path.equals(path);
    }

    @Override
    public int hashCode() {
        return Objects.hash(file, path);
    }

    @Override
    public String toString() {
        return file.getFullPath() + "#" + path;
    }
}
