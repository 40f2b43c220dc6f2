/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.find;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.ui.quickaccess.IQuickAccessComputerExtension;
import org.eclipse.ui.quickaccess.QuickAccessElement;
import org.ferrule.model.Device;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.DocumentKind;
import org.ferrule.ui.Services;
import org.ferrule.ui.document.DocumentFiles;
import org.ferrule.ui.document.DocumentRecords;

/** Finds devices of the open projects by parts of their name, id, maker, model or size; unsaved ones too. */
public class DeviceFinder implements IQuickAccessComputerExtension {

    private static final int FEWEST_LETTERS = 2;
    private static final int MOST_FOUND = 60;

    private final DocumentRecords records = Services.get(DocumentRecords.class);

    /** Everything depends on what is typed. */
    @Override
    public QuickAccessElement[] computeElements() {
        return new QuickAccessElement[0];
    }

    @Override
    public QuickAccessElement[] computeElements(String query, IProgressMonitor monitor) {
        String[] words = query.toLowerCase(Locale.ROOT).strip().split("\\s+");
        List<QuickAccessElement> found = new ArrayList<>();
        if (query.strip().length() >= FEWEST_LETTERS) {
            for (IFile library : libraries()) {
                if (found.size() < MOST_FOUND && !monitor.isCanceled()) {
                    find(library, words, found);
                }
            }
        }
        return found.toArray(QuickAccessElement[]::new);
    }

    private static List<IFile> libraries() {
        List<IFile> libraries = new ArrayList<>();
        for (IProject project : ResourcesPlugin.getWorkspace().getRoot().getProjects()) {
            try {
                if (project.isAccessible()) {
                    project.accept(resource -> add(resource, libraries));
                }
            } catch (CoreException e) {
                ILog.of(DeviceFinder.class).log(e.getStatus());
            }
        }
        return libraries;
    }

    private static boolean add(IResource resource, List<IFile> libraries) {
        if (resource instanceof IFile file
                && DocumentFiles.kind(file.getName()).filter(DocumentKind.DEVICES::equals).isPresent()) {
            libraries.add(file);
        }
        return true;
    }

    private void find(IFile library, String[] words, List<QuickAccessElement> found) {
        try {
            if (records.of(library).document().orElse(null) instanceof DeviceLibrary devices) {
                devices.getDevices().stream().map(device -> new FoundDevice(library, device))
                        .filter(device -> device.matches(words)).limit(MOST_FOUND - found.size())
                        .forEach(found::add);
            }
        } catch (CoreException e) {
            ILog.of(DeviceFinder.class).log(e.getStatus());
        }
    }

    @Override
    public void resetState() {
        // has no state
    }

    @Override
    public boolean needsRefresh() {
        return true;
    }

    /** Returns the words of a device in which to look. */
    static String text(Device device) {
        StringBuilder text = new StringBuilder();
        for (String part : new String[] { device.getName(), device.getId(), device.getMaker(),
            device.getModel(), device.getSize() }) {
            text.append(part == null ? "" : part + " ");
        }
        return text.toString().strip();
    }
}
