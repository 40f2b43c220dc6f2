/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.sheet;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.Status;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.statushandlers.StatusManager;
import org.ferrule.io.json.AtomicFiles;
import org.ferrule.io.pdf.PdfWriter;
import org.ferrule.io.svg.SvgWriter;
import org.ferrule.picture.Document;
import org.ferrule.ui.document.DocumentFiles;
import org.ferrule.ui.fit.page.WriteFailure;

/** Writes a plan sheet into a file, as PDF or SVG. */
public final class SheetExport {

    private static final String PDF = ".pdf";
    private static final String SVG = ".svg";
    private static final List<String> ENDINGS = List.of(PDF, SVG);
    private static final String TITLE = "Export plan sheet";

    private final Shell shell;
    private final IFile file;

    /** Exports the sheet of a case. */
    public SheetExport(Shell shell, IFile file) {
        this.shell = shell;
        this.file = file;
    }

    /** Asks where to, and in which format. */
    void ask(Document sheet) {
        FileDialog dialog = new FileDialog(shell, SWT.SAVE);
        dialog.setText(TITLE);
        dialog.setFilterExtensions(ENDINGS.stream().map(ending -> "*" + ending).toArray(String[]::new));
        dialog.setFilterNames(new String[] { "PDF", "SVG" });
        dialog.setFileName(DocumentFiles.baseName(file) + PDF);
        dialog.setFilterPath(file.getParent().getLocation().toOSString());
        dialog.setOverwrite(true);
        String chosen = dialog.open();
        if (chosen == null) {
            return;
        }
        Path target = target(chosen, dialog.getFilterIndex());
        if (target.equals(Path.of(chosen)) || mayReplace(target)) {
            export(sheet, target);
        }
    }

    /** A name without an ending of ours gets that of the format that was chosen. */
    public static Path target(String name, int format) {
        String typed = name.toLowerCase(Locale.ROOT);
        boolean ends = ENDINGS.stream().anyMatch(typed::endsWith);
        return Path.of(ends ? name : name + ENDINGS.get(Math.max(0, format)));
    }

    /** The dialog has asked for the name as it was typed only. */
    private boolean mayReplace(Path target) {
        return !Files.exists(target) || MessageDialog.openQuestion(shell, TITLE,
                "There is already " + target.getFileName() + " in " + target.getParent() + ".\n\nReplace it?");
    }

    private void export(Document sheet, Path target) {
        try {
            write(sheet, target);
        } catch (IOException e) {
            tell(WriteFailure.words(target, e), e);
        } catch (CoreException e) {
            tell(e.getMessage(), e);
        }
    }

    private static void tell(String why, Exception failure) {
        StatusManager.getManager().handle(
                Status.error("The plan sheet could not be exported: " + why + ".", failure), StatusManager.SHOW);
    }

    /** Writes the sheet as a whole or not at all; a name that does not end in .svg is that of a PDF. */
    public void write(Document sheet, Path target) throws IOException, CoreException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        if (target.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(SVG)) {
            new SvgWriter().write(sheet.pages().get(0), bytes);
        } else {
            new PdfWriter().write(sheet, bytes);
        }
        AtomicFiles.write(target, bytes.toByteArray());
        if (target.getParent() != null && target.getParent().equals(file.getParent().getLocation().toPath())) {
            file.getParent().refreshLocal(IResource.DEPTH_ONE, null);
        }
    }
}
