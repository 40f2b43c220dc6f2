/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.project;

import java.io.ByteArrayInputStream;
import java.io.InputStream;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.ui.dialogs.WizardNewFileCreationPage;
import org.eclipse.ui.statushandlers.StatusManager;
import org.ferrule.model.DocumentKind;

/** Asks for the folder and the name of a new document; the ending of the name need not be typed. */
final class NewDocumentPage extends WizardNewFileCreationPage {

    private final DocumentKind kind;

    NewDocumentPage(DocumentKind kind, IStructuredSelection selection) {
        super("document", selection);
        this.kind = kind;
        setTitle("New " + word(kind));
        setDescription("The file's name ends with " + kind.suffix() + ".");
        setFileName("new" + kind.suffix());
    }

    static String word(DocumentKind kind) {
        return switch (kind) {
            case DEVICES -> "Device Library";
            case RULES -> "Rule Set";
            case CHART -> "Fit Chart";
            case TECHNIQUES -> "Technique Library";
            case CASE -> "Case";
            case SHELF -> "Shelf";
        };
    }

    @Override
    public String getFileName() {
        String name = super.getFileName();
        return name == null || name.isBlank() || name.endsWith(kind.suffix()) ? name : name + kind.suffix();
    }

    @Override
    protected InputStream getInitialContents() {
        IFile file = ResourcesPlugin.getWorkspace().getRoot()
                .getFile(getContainerFullPath().append(getFileName()));
        try {
            return new ByteArrayInputStream(new FirstContent(file, kind).bytes());
        } catch (CoreException e) {
            StatusManager.getManager().handle(e.getStatus(), StatusManager.SHOW | StatusManager.LOG);
            return null;
        }
    }

    @Override
    protected void createLinkTarget() {
        // documents are not linked
    }
}
