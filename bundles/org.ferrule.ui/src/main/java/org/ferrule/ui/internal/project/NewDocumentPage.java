/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.project;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.stream.Stream;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.dialogs.WizardNewFileCreationPage;
import org.eclipse.ui.statushandlers.StatusManager;
import org.ferrule.model.DocumentKind;

/** Asks for the folder and the name of a new document; the ending of the name need not be typed. */
final class NewDocumentPage extends WizardNewFileCreationPage {

    /** In bytes: a file system takes 255, and saving writes beside the file one with a longer name first. */
    private static final int LONGEST_NAME = 200;

    private final DocumentKind kind;

    NewDocumentPage(DocumentKind kind, IStructuredSelection selection) {
        super("document", selection);
        this.kind = kind;
        setTitle("New " + word(kind));
        setDescription(purpose(kind) + "\nThe file's name ends with " + kind.suffix() + ".");
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

    private static String purpose(DocumentKind kind) {
        return switch (kind) {
            case DEVICES -> "Devices with their dimensions as the makers print them, and where each figure stands.";
            case RULES -> "How much clearance is asked for, and what is assumed where nothing is stated.";
            case CHART -> "A matrix of outer and inner devices, and under which conditions they are asked about.";
            case TECHNIQUES -> "Ways to get a device across a lesion, with what each takes and when to give it up.";
            case CASE -> "What is in place, the lesion, and the plan of steps for it. Nothing about the patient.";
            case SHELF -> "What the laboratory has: items, lots, expiry, and how many there should be.";
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
        if (isTooLong(name)) {
            return "The name is too long: at most " + LONGEST_NAME
                    + " bytes with its ending; plain letters take one, others more.";
        }
        if (Stream.of(getContainerFullPath().segments()).anyMatch(NewDocumentPage::isTooLong)) {
            return "The name of the folder is too long: at most " + LONGEST_NAME
                    + " bytes; plain letters take one, others more.";
        }
        IFile file = ResourcesPlugin.getWorkspace().getRoot().getFile(getContainerFullPath().append(name));
        return file.exists() ? "\u201c" + name + "\u201d is there already." : null;
    }

    private static boolean isTooLong(String name) {
        return name.getBytes(StandardCharsets.UTF_8).length > LONGEST_NAME;
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
    protected void createAdvancedControls(Composite parent) {
        // they are about links, and documents are not linked
    }

    @Override
    protected void createLinkTarget() {
        // documents are not linked
    }

    @Override
    protected IStatus validateLinkedResource() {
        return Status.OK_STATUS;
    }
}
