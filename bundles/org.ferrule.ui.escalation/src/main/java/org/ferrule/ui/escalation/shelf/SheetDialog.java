/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.ui.escalation.shelf;

import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.ferrule.shelf.sheet.ReadShelf;
import org.ferrule.shelf.sheet.SheetException;
import org.ferrule.shelf.sheet.SheetFault;
import org.ferrule.shelf.sheet.ShelfChange;
import org.ferrule.shelf.sheet.ShelfChanges;

/** Shows what a sheet would change on a shelf, or which rows of it cannot be read, before anything is changed. */
final class SheetDialog extends TitleAreaDialog {

    private static final int WIDTH = 760;
    private static final int HEIGHT = 520;
    private static final int[] CHARACTERS = { 14, 24, 22, 32, 32 };

    private final SheetFiles files;
    private final Path file;
    private Table table;
    private Button removing;
    private ReadShelf sheet;

    SheetDialog(Shell shell, SheetFiles files, Path file) {
        super(shell);
        this.files = files;
        this.file = file;
        setShellStyle(getShellStyle() | SWT.RESIZE);
        setBlockOnOpen(false);
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText("Import sheet");
    }

    @Override
    protected Point getInitialSize() {
        return new Point(WIDTH, HEIGHT);
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
        GridLayoutFactory.fillDefaults().margins(12, 10).spacing(8, 8).applyTo(area);
        setTitle("Import " + file.getFileName());
        table = new Table(area, SWT.BORDER | SWT.FULL_SELECTION);
        table.setHeaderVisible(true);
        table.setLinesVisible(true);
        GridDataFactory.fillDefaults().grab(true, true).hint(WIDTH / 2, HEIGHT / 3).applyTo(table);
        removing = new Button(area, SWT.CHECK);
        removing.setText("&Remove items that the sheet does not have");
        removing.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> showChanges()));
        read();
        return area;
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, "&Take over", true);
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
        getButton(IDialogConstants.OK_ID).setEnabled(sheet != null && table.getItemCount() > 0);
    }

    private void read() {
        try {
            sheet = files.read(file);
            columns("", "Item", "What", "Now", "Then");
            showChanges();
        } catch (SheetException e) {
            columns("Row", "Column", "Stands there", "Expected");
            e.faults().forEach(this::row);
            refuse("Nothing is taken over: the sheet has " + e.faults().size()
                    + (e.faults().size() == 1 ? " fault." : " faults."));
        } catch (IOException e) {
            refuse("The sheet cannot be read: " + (e instanceof NoSuchFileException gone
                    ? "there is no such file, " + gone.getFile() : e.getMessage()));
        }
        if (sheet != null && !files.problems().isEmpty()) {
            sheet = null;
            refuse("Mend the shelf first; a sheet would lose what cannot be read of it: "
                    + String.join("; ", files.problems()));
        }
    }

    private void refuse(String message) {
        setErrorMessage(message);
        removing.setEnabled(false);
    }

    private void columns(String... titles) {
        for (int i = 0; i < titles.length; i++) {
            TableColumn column = new TableColumn(table, SWT.NONE);
            column.setText(titles[i]);
            column.setWidth(convertWidthInCharsToPixels(CHARACTERS[i]));
        }
    }

    private void row(SheetFault fault) {
        new TableItem(table, SWT.NONE).setText(new String[] { Integer.toString(fault.row()), fault.column(),
            fault.text(), fault.expected() });
    }

    private void showChanges() {
        table.removeAll();
        List<ShelfChange> changes = ShelfChanges.between(files.shelf(), sheet.over(files.shelf()),
                removing.getSelection());
        changes.forEach(change -> new TableItem(table, SWT.NONE).setText(new String[] { word(change.kind()),
            change.item(), change.what(), change.was(), change.is() }));
        String counted = changes.isEmpty() ? "The sheet changes nothing."
                : changes.size() == 1 ? "One change; Ctrl+Z takes it back."
                        : changes.size() + " changes; Ctrl+Z takes them back at once.";
        if (sheet.unknownColumns().isEmpty()) {
            setMessage(counted);
        } else {
            setMessage(counted + " Columns that mean nothing here, and are not read: "
                    + String.join(", ", sheet.unknownColumns()), IMessageProvider.WARNING);
        }
        Button take = getButton(IDialogConstants.OK_ID);
        if (take != null) {
            take.setEnabled(!changes.isEmpty());
        }
    }

    private static String word(ShelfChange.Kind kind) {
        return switch (kind) {
            case ADDED -> "+ added";
            case CHANGED -> "~ changed";
            case REMOVED -> "\u2212 removed";
        };
    }

    @Override
    protected void okPressed() {
        boolean all = removing.getSelection();
        super.okPressed();
        files.take(sheet.over(files.shelf()), all);
    }
}
