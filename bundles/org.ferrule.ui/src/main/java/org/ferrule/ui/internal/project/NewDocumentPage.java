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
        if (name == null || name.isBlank()) {
            return name;
        }
        int own = name.length() - kind.suffix().length();
        boolean ends = own >= 0 && name.substring(own).equalsIgnoreCase(kind.suffix());
        return (ends ? name.substring(0, own) : name) + kind.suffix();
    }

    /** The platform looks at the name as it is typed; the file gets its ending after that. */
    @Override
    protected boolean validatePage() {
        if (!super.validatePage()) {
            return false;
        }
        String wrong = problem(getFileName());
        if (wrong != null) {
            setErrorMessage(wrong);
        }
        return wrong == null;
    }

    private String problem(String name) {
        String own = name.substring(0, name.length() - kind.suffix().length());
        if (own.isBlank() || !own.equals(own.strip())) {
            return own.isBlank() ? "Something must stand before " + kind.suffix() + "."
                    : "The name must not begin or end with a space.";
        }
        if (own.contains("/") || own.contains("\\")) {
            return "The name must not lead into a folder; choose the folder above.";
        }
        if (DocumentKind.ofFileName(own).isPresent()) {
            return "\u201c" + own + "\u201d is the name of another kind of document.";
        }
        IFile file = ResourcesPlugin.getWorkspace().getRoot().getFile(getContainerFullPath().append(name));
        return file.exists() ? "\u201c" + name + "\u201d is there already." : null;
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
