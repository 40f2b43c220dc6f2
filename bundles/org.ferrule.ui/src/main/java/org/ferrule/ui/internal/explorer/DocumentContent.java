/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.explorer;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.viewers.ITreeContentProvider;
import org.eclipse.jface.viewers.StructuredViewer;
import org.eclipse.jface.viewers.Viewer;
import org.ferrule.model.Device;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.DeviceLine;
import org.ferrule.model.DocumentKind;
import org.ferrule.ui.Services;
import org.ferrule.ui.document.DocumentFiles;
import org.ferrule.ui.document.DocumentRecords;

/** Lines and devices inside of device libraries, as they stand now, unsaved edits included. */
public class DocumentContent implements ITreeContentProvider {

    private static final Object[] NONE = {};

    private final DocumentRecords records = Services.get(DocumentRecords.class);
    private final Consumer<IFile> follower = this::refresh;
    private StructuredViewer viewer;

    @Override
    public void inputChanged(Viewer changed, Object oldInput, Object newInput) {
        viewer = (StructuredViewer) changed;
        records.removeListener(follower);
        records.addListener(follower);
    }

    @Override
    public void dispose() {
        records.removeListener(follower);
    }

    private void refresh(IFile file) {
        viewer.getControl().getDisplay().asyncExec(() -> {
            if (!viewer.getControl().isDisposed()) {
                viewer.refresh(file);
            }
        });
    }

    @Override
    public Object[] getElements(Object input) {
        return getChildren(input);
    }

    @Override
    public Object[] getChildren(Object parent) {
        if (parent instanceof IFile file) {
            return library(file).map(library -> topOf(file, library)).orElse(NONE);
        }
        return parent instanceof DocumentNode node && node.object() instanceof DeviceLine line
                ? devicesOf(node.file(), line)
                : NONE;
    }

    private Optional<DeviceLibrary> library(IFile file) {
        if (!DocumentFiles.isDocument(file) || !file.isAccessible()) {
            return Optional.empty();
        }
        try {
            return records.of(file).document().filter(DeviceLibrary.class::isInstance).map(DeviceLibrary.class::cast);
        } catch (CoreException e) {
            ILog.of(DocumentContent.class).log(e.getStatus());
            return Optional.empty();
        }
    }

    /** Lines first, then the devices of no known line. */
    private static Object[] topOf(IFile file, DeviceLibrary library) {
        List<DocumentNode> nodes = new ArrayList<>();
        library.getLines().forEach(line -> nodes.add(new DocumentNode(file, line)));
        library.getDevices().stream().filter(device -> lineOf(device).isEmpty())
                .forEach(device -> nodes.add(new DocumentNode(file, device)));
        return nodes.toArray();
    }

    private static Object[] devicesOf(IFile file, DeviceLine line) {
        return ((DeviceLibrary) line.eContainer()).getDevices().stream()
                .filter(device -> line.getId() != null && line.getId().equals(device.getLine()))
                .map(device -> new DocumentNode(file, device)).toArray();
    }

    private static Optional<DeviceLine> lineOf(Device device) {
        DeviceLibrary library = (DeviceLibrary) device.eContainer();
        return library.getLines().stream()
                .filter(line -> line.getId() != null && Objects.equals(line.getId(), device.getLine())).findFirst();
    }

    @Override
    public Object getParent(Object element) {
        if (!(element instanceof DocumentNode node)) {
            return null;
        }
        return node.object() instanceof Device device
                ? lineOf(device).map(line -> (Object) new DocumentNode(node.file(), line)).orElse(node.file())
                : node.file();
    }

    /** Asked for each file that comes into sight: reading it must wait until it is opened. */
    @Override
    public boolean hasChildren(Object element) {
        if (element instanceof IFile file) {
            return DocumentFiles.kind(file.getName()).filter(kind -> kind == DocumentKind.DEVICES)
                    .isPresent();
        }
        return element instanceof DocumentNode node && node.object() instanceof DeviceLine;
    }
}
