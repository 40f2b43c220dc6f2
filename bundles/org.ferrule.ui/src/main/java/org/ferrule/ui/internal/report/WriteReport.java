/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.report;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.Status;
import org.eclipse.jface.dialogs.ErrorDialog;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.handlers.HandlerUtil;
import org.ferrule.ui.document.DocumentFiles;

/** Writes a report of errors, after asking what goes into it. */
public class WriteReport extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindowChecked(event);
        Path proposed = Path.of(System.getProperty("user.home"), "ferrule-report-" + LocalDate.now() + ".zip");
        ReportDialog dialog = new ReportDialog(window.getShell(), documents(), proposed.toAbsolutePath());
        if (dialog.open() == Window.OK) {
            write(window, new ErrorReport(dialog.chosen()), dialog.target());
        }
        return null;
    }

    private static void write(IWorkbenchWindow window, ErrorReport report, Path target) {
        try {
            window.run(true, true, monitor -> {
                try {
                    report.write(target, monitor);
                } catch (IOException e) {
                    throw new InvocationTargetException(e);
                }
            });
            MessageDialog.openInformation(window.getShell(), "Error Report", "The report is written to\n" + target);
        } catch (InvocationTargetException e) {
            ErrorDialog.openError(window.getShell(), "Error Report", "The report could not be written.",
                    Status.error(e.getCause().toString(), e.getCause()));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static List<IFile> documents() {
        List<IFile> documents = new ArrayList<>();
        for (IProject project : ResourcesPlugin.getWorkspace().getRoot().getProjects()) {
            try {
                if (project.isAccessible()) {
                    project.accept(resource -> add(resource, documents));
                }
            } catch (CoreException e) {
                ILog.of(WriteReport.class).log(e.getStatus());
            }
        }
        return documents;
    }

    private static boolean add(IResource resource, List<IFile> documents) {
        if (DocumentFiles.isDocument(resource) && resource.getLocation() != null) {
            documents.add((IFile) resource);
        }
        return true;
    }
}
