/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.find;

import java.util.Locale;
import java.util.stream.Stream;

import org.eclipse.core.resources.IFile;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.quickaccess.QuickAccessElement;
import org.eclipse.ui.statushandlers.StatusManager;
import org.ferrule.model.Device;
import org.ferrule.model.ElementPath;
import org.ferrule.ui.edit.Reveal;
import org.ferrule.ui.look.Icons;

/** A device among what Quick Access has found; choosing it opens its library at the device. */
final class FoundDevice extends QuickAccessElement {

    private final IFile library;
    private final String path;
    private final String label;
    private final String text;
    private final Icons icon;

    FoundDevice(IFile library, Device device) {
        this.library = library;
        this.path = ElementPath.of(device);
        this.label = (device.getName() == null ? device.getId() : device.getName()) + separator
                + library.getFullPath().makeRelative();
        this.text = DeviceFinder.text(device);
        this.icon = Icons.of(device.isSetKind() ? device.getKind() : null);
    }

    boolean matches(String[] words) {
        String searched = text.toLowerCase(Locale.ROOT);
        return Stream.of(words).allMatch(searched::contains);
    }

    @Override
    public String getLabel() {
        return label;
    }

    /** The filter of Quick Access looks here too. */
    @Override
    public String getMatchLabel() {
        return label + " " + text;
    }

    @Override
    public ImageDescriptor getImageDescriptor() {
        return icon.descriptor();
    }

    @Override
    public String getId() {
        return library.getFullPath() + "#" + path;
    }

    @Override
    public void execute() {
        IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
        try {
            Reveal.open(window.getActivePage(), library, path);
        } catch (PartInitException e) {
            StatusManager.getManager().handle(e.getStatus(), StatusManager.SHOW | StatusManager.LOG);
        }
    }
}
