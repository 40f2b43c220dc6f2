/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.report;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.core.resources.IFile;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.CheckboxTableViewer;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

/** Asks where to write a report of errors, and which documents go into it: none, unless the user ticks some. */
final class ReportDialog extends TitleAreaDialog {

    private static final Point SIZE = new Point(620, 460);

    private final List<IFile> offered;
    private final Path proposed;
    private List<IFile> chosen = List.of();
    private Path target;
    private Text file;
    private CheckboxTableViewer documents;

    ReportDialog(Shell shell, List<IFile> offered, Path proposed) {
        super(shell);
        this.offered = offered;
        this.proposed = proposed;
        setShellStyle(getShellStyle() | SWT.RESIZE);
    }

    /** Returns the file to write. */
    Path target() {
        return target;
    }

    /** Returns the documents to put into it. */
    List<IFile> chosen() {
        return chosen;
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText("Error Report");
    }

    @Override
    protected Point getInitialSize() {
        return SIZE;
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        setTitle("A report that you can send");
        setMessage(
                "It holds the program's log, which may name files and folders, and the versions of its parts. Nothing"
                        + " is sent by itself.");
        Composite area = (Composite) super.createDialogArea(parent);
        Composite body = new Composite(area, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(body);
        GridLayoutFactory.fillDefaults().numColumns(3).margins(12, 12).spacing(8, 8).applyTo(body);
        createFile(body);
        createDocuments(body);
        return area;
    }

    private void createFile(Composite body) {
        new Label(body, SWT.NONE).setText("&File:");
        file = new Text(body, SWT.BORDER);
        file.setText(proposed.toString());
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(file);
        file.addModifyListener(event -> validate());
        Button browse = new Button(body, SWT.PUSH);
        browse.setText("&Browse...");
        browse.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> browse()));
    }

    private void browse() {
        FileDialog dialog = new FileDialog(getShell(), SWT.SAVE);
        dialog.setFilterExtensions(new String[] { "*.zip" });
        dialog.setFileName(proposed.getFileName().toString());
        String answer = dialog.open();
        if (answer != null) {
            file.setText(answer);
        }
    }

    private void createDocuments(Composite body) {
        Label label = new Label(body, SWT.NONE);
        label.setText("&Documents to put in, as they are saved:");
        GridDataFactory.fillDefaults().span(3, 1).indent(0, 6).applyTo(label);
        documents = CheckboxTableViewer.newCheckList(body, SWT.BORDER);
        documents.setContentProvider(ArrayContentProvider.getInstance());
        documents.setLabelProvider(LabelProvider
                .createTextProvider(one -> ((IFile) one).getFullPath().makeRelative().toString()));
        documents.setInput(offered);
        GridDataFactory.fillDefaults().grab(true, true).span(3, 1).hint(SWT.DEFAULT, 120)
                .applyTo(documents.getControl());
    }

    private void validate() {
        boolean valid = !file.getText().isBlank() && Path.of(file.getText().strip()).isAbsolute();
        setErrorMessage(valid ? null : "Name a file with its whole path");
        getButton(IDialogConstants.OK_ID).setEnabled(valid);
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, "&Write", true);
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
    }

    @Override
    protected void okPressed() {
        target = Path.of(file.getText().strip());
        chosen = Stream.of(documents.getCheckedElements()).map(IFile.class::cast).toList();
        super.okPressed();
    }
}
