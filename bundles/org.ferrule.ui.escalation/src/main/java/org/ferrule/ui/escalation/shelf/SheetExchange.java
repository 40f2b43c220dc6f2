/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.ui.escalation.shelf;

import java.io.IOException;
import java.nio.file.Path;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.Status;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.statushandlers.StatusManager;
import org.ferrule.shelf.sheet.ShelfFormat;
import org.ferrule.ui.document.DocumentFiles;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.fit.page.WriteFailure;

/** Asks for the files into which a shelf goes, and from which it comes back. */
public final class SheetExchange {

    private final Shell shell;
    private final DocumentSession session;
    private final SheetFiles files;

    SheetExchange(Shell shell, DocumentSession session) {
        this.shell = shell;
        this.session = session;
        this.files = new SheetFiles(session);
    }

    void export() {
        FileDialog dialog = dialog(SWT.SAVE, "Export shelf");
        dialog.setFileName(DocumentFiles.baseName(session.file()) + "." + files.formats().get(0).extension());
        dialog.setOverwrite(true);
        String chosen = dialog.open();
        if (chosen == null) {
            return;
        }
        try {
            files.write(Path.of(chosen));
        } catch (IOException e) {
            tell(WriteFailure.words(Path.of(chosen), e), e);
        } catch (CoreException e) {
            tell(e.getMessage(), e);
        }
    }

    private static void tell(String why, Exception failure) {
        StatusManager.getManager().handle(Status.error("The shelf could not be exported: " + why + ".", failure),
                StatusManager.SHOW);
    }

    void takeIn() {
        String chosen = dialog(SWT.OPEN, "Import sheet").open();
        if (chosen != null) {
            takeIn(Path.of(chosen));
        }
    }

    /** Shows what a sheet would change, and takes it over when that is agreed to. */
    public void takeIn(Path sheet) {
        new SheetDialog(shell, files, sheet).open();
    }

    /** Returns what reads and writes the sheets. */
    public SheetFiles files() {
        return files;
    }

    private FileDialog dialog(int style, String title) {
        FileDialog dialog = new FileDialog(shell, style);
        dialog.setText(title);
        dialog.setFilterExtensions(
                files.formats().stream().map(format -> "*." + format.extension()).toArray(String[]::new));
        dialog.setFilterNames(files.formats().stream().map(ShelfFormat::label).toArray(String[]::new));
        dialog.setFilterPath(session.file().getParent().getLocation().toOSString());
        return dialog;
    }
}
