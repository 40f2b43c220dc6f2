/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.sheet;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.Status;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.statushandlers.StatusManager;
import org.ferrule.io.json.AtomicFiles;
import org.ferrule.io.pdf.PdfWriter;
import org.ferrule.io.svg.SvgWriter;
import org.ferrule.picture.Document;
import org.ferrule.ui.document.DocumentFiles;

/** Writes a plan sheet into a file, as PDF or SVG. */
public final class SheetExport {

    private static final String PDF = ".pdf";
    private static final String SVG = ".svg";

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
        dialog.setText("Export plan sheet");
        dialog.setFilterExtensions("*" + PDF, "*" + SVG);
        dialog.setFilterNames(new String[] { "PDF", "SVG" });
        dialog.setFileName(DocumentFiles.baseName(file) + PDF);
        dialog.setFilterPath(file.getParent().getLocation().toOSString());
        dialog.setOverwrite(true);
        String chosen = dialog.open();
        if (chosen == null) {
            return;
        }
        try {
            write(sheet, Path.of(chosen));
        } catch (IOException | CoreException e) {
            StatusManager.getManager().handle(
                    Status.error("The plan sheet could not be exported: " + e.getMessage(), e), StatusManager.SHOW);
        }
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
