/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.page;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.Status;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.statushandlers.StatusManager;
import org.ferrule.chart.export.ChartExporter;
import org.ferrule.chart.export.ExportedFile;
import org.ferrule.chart.page.ChartContent;
import org.ferrule.engine.extension.Extensions;
import org.ferrule.io.json.AtomicFiles;
import org.ferrule.ui.document.DocumentFiles;

/** Exports a chart in any of the formats that plug-ins offer. Asks before a file is replaced, and writes it whole. */
public final class ChartExport {

    private final List<ChartExporter> exporters = Extensions.ofPlatform().exporters();
    private final Shell shell;
    private final IFile chart;

    /** Exports the chart of a file. */
    public ChartExport(Shell shell, IFile chart) {
        this.shell = shell;
        this.chart = chart;
    }

    /** Asks where to, and in which format. */
    void ask(ChartContent content) {
        FileDialog dialog = new FileDialog(shell, SWT.SAVE);
        dialog.setText("Export chart");
        dialog.setFilterExtensions(exporters.stream().map(e -> "*." + e.extension()).toArray(String[]::new));
        dialog.setFilterNames(exporters.stream().map(ChartExporter::label).toArray(String[]::new));
        dialog.setFileName(DocumentFiles.baseName(chart) + "." + exporters.get(0).extension());
        dialog.setFilterPath(chart.getParent().getLocation().toOSString());
        String chosen = dialog.open();
        if (chosen != null) {
            exportTo(content, Path.of(chosen), exporter(chosen, dialog.getFilterIndex()));
        }
    }

    /** The ending that was typed counts before the filter that was chosen. */
    private ChartExporter exporter(String name, int filter) {
        return exporters.stream().filter(e -> name.toLowerCase(Locale.ROOT).endsWith("." + e.extension()))
                .findFirst().orElse(exporters.get(Math.max(0, filter)));
    }

    private void exportTo(ChartContent content, Path target, ChartExporter exporter) {
        try {
            List<ExportedFile> files = exported(content, baseName(target, exporter), exporter);
            if (mayReplace(target.getParent(), files)) {
                write(target.getParent(), files);
            }
        } catch (IOException e) {
            tell(WriteFailure.words(target, e), e);
        } catch (CoreException e) {
            tell(e.getMessage(), e);
        }
    }

    private static void tell(String why, Exception failure) {
        StatusManager.getManager().handle(Status.error("The chart could not be exported: " + why + ".", failure),
                StatusManager.SHOW);
    }

    private static String baseName(Path target, ChartExporter exporter) {
        String name = target.getFileName().toString();
        String ending = "." + exporter.extension();
        return name.toLowerCase(Locale.ROOT).endsWith(ending) ? name.substring(0, name.length() - ending.length())
                : name;
    }

    private static List<ExportedFile> exported(ChartContent content, String baseName, ChartExporter exporter)
            throws IOException {
        Exporting exporting = new Exporting(content, baseName, exporter);
        try {
            PlatformUI.getWorkbench().getProgressService().busyCursorWhile(monitor -> exporting.run());
        } catch (InvocationTargetException e) {
            throw new IOException(e.getCause().getMessage(), e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        return exporting.files;
    }

    private boolean mayReplace(Path folder, List<ExportedFile> files) {
        String there = files.stream().map(ExportedFile::name).filter(name -> Files.exists(folder.resolve(name)))
                .collect(Collectors.joining(", "));
        return there.isEmpty() || MessageDialog.openQuestion(shell, "Export chart",
                "There is already " + there + " in " + folder + ".\n\nReplace it?");
    }

    /** Writes exported files into a folder, each as a whole or not at all. */
    public void write(Path folder, List<ExportedFile> files) throws IOException, CoreException {
        for (ExportedFile file : files) {
            AtomicFiles.write(folder.resolve(file.name()), file.bytes());
        }
        if (folder.equals(chart.getParent().getLocation().toPath())) {
            chart.getParent().refreshLocal(IResource.DEPTH_ONE, null);
        }
    }

    /** Exports away from the display's thread. */
    private static final class Exporting {

        private final ChartContent content;
        private final String baseName;
        private final ChartExporter exporter;
        private List<ExportedFile> files = List.of();

        Exporting(ChartContent content, String baseName, ChartExporter exporter) {
            this.content = content;
            this.baseName = baseName;
            this.exporter = exporter;
        }

        void run() throws InvocationTargetException {
            try {
                files = exporter.export(content, baseName, OffsetDateTime.now());
            } catch (IOException | RuntimeException e) {
                throw new InvocationTargetException(e);
            }
        }
    }
}
