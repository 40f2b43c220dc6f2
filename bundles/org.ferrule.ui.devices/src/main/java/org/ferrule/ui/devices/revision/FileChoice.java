/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.revision;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.dialogs.ElementListSelectionDialog;
import org.ferrule.model.DocumentKind;
import org.ferrule.ui.document.DocumentFiles;

/** Asks for another library of the workspace. */
final class FileChoice {

    private FileChoice() {
    }

    static Optional<Revision> ask(Shell shell, IFile except) {
        ElementListSelectionDialog dialog = new ElementListSelectionDialog(shell, new LabelProvider() {
            @Override
            public String getText(Object element) {
                return path((IFile) element);
            }
        });
        dialog.setTitle("Compare with Another Library");
        dialog.setMessage("Device libraries of the workspace; type a part of the name:");
        dialog.setEmptyListMessage("There is no other library");
        dialog.setElements(libraries(except).toArray());
        dialog.open();
        return Optional.ofNullable((IFile) dialog.getFirstResult()).map(file -> new Revision(path(file), file));
    }

    private static String path(IFile file) {
        return file.getFullPath().makeRelative().toString();
    }

    private static List<IFile> libraries(IFile except) {
        List<IFile> found = new ArrayList<>();
        try {
            except.getWorkspace().getRoot().accept(resource -> {
                if (isLibrary(resource) && !resource.equals(except)) {
                    found.add((IFile) resource);
                }
                return true;
            });
        } catch (CoreException e) {
            ILog.of(FileChoice.class).log(e.getStatus());
        }
        return found;
    }

    private static boolean isLibrary(IResource resource) {
        return resource instanceof IFile
                && DocumentFiles.kind(resource.getName()).filter(DocumentKind.DEVICES::equals).isPresent();
    }
}
