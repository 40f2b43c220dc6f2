/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.recovery;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.ferrule.ui.internal.recovery.UnsavedJournal.Left;

/** Lists edits that were not saved when the program ended, and lets the user restore, compare or discard each. */
final class RecoveryDialog extends TitleAreaDialog {

    /** What can be done with edits; each may fail and then tells the user and keeps them. */
    interface Choices {
        /** Opens the document with the edits; tells whether that was possible. */
        boolean restore(Left edits);

        /** Shows what the edits change. */
        void compare(Left edits);

        /** Asks, and forgets the edits; tells whether that was done. */
        boolean discard(List<Left> edits);
    }

    private static final int RESTORE = IDialogConstants.CLIENT_ID;
    private static final int COMPARE = IDialogConstants.CLIENT_ID + 1;
    private static final int DISCARD = IDialogConstants.CLIENT_ID + 2;
    private static final Point SIZE = new Point(760, 380);
    private static final DateTimeFormatter TIME = DateTimeFormatter
            .ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT)
            .withZone(ZoneId.systemDefault());

    private final List<Left> left;
    private final Choices choices;
    private TableViewer table;

    RecoveryDialog(Shell shell, List<Left> left, Choices choices) {
        super(shell);
        this.left = new ArrayList<>(left);
        this.choices = choices;
        setShellStyle(getShellStyle() | SWT.RESIZE);
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText("Unsaved Edits");
    }

    @Override
    protected Point getInitialSize() {
        return SIZE;
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        setTitle("Edits that were not saved");
        setMessage("The program ended before these edits were saved. Restored edits are not saved yet and can be"
                + " undone.");
        Composite area = (Composite) super.createDialogArea(parent);
        Composite body = new Composite(area, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(body);
        GridLayoutFactory.fillDefaults().margins(10, 10).applyTo(body);
        Composite frame = new Composite(body, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(frame);
        createTable(frame);
        return area;
    }

    private void createTable(Composite frame) {
        TableColumnLayout columns = new TableColumnLayout();
        frame.setLayout(columns);
        table = new TableViewer(frame, SWT.MULTI | SWT.FULL_SELECTION | SWT.BORDER);
        table.getTable().setHeaderVisible(true);
        column(columns, "Document", 36, one -> one.edits().path().makeRelative().toString());
        column(columns, "Edited", 24, one -> TIME.format(one.edits().time()));
        column(columns, "File on disk", 40, one -> RecoveryState.of(one.edits()).words());
        table.setContentProvider(ArrayContentProvider.getInstance());
        table.setInput(left);
        table.addSelectionChangedListener(event -> updateButtons());
        table.addDoubleClickListener(event -> compare());
    }

    private void column(TableColumnLayout layout, String title, int weight, Function<Left, String> text) {
        TableViewerColumn column = new TableViewerColumn(table, SWT.NONE);
        column.getColumn().setText(title);
        column.setLabelProvider(ColumnLabelProvider.createTextProvider(one -> text.apply((Left) one)));
        layout.setColumnData(column.getColumn(), new ColumnWeightData(weight, 80));
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, RESTORE, "&Restore", true);
        createButton(parent, COMPARE, "&Compare...", false);
        createButton(parent, DISCARD, "&Discard...", false);
        createButton(parent, IDialogConstants.CANCEL_ID, "Decide &later", false);
        table.setSelection(new StructuredSelection(left));
        updateButtons();
    }

    @Override
    protected void buttonPressed(int button) {
        switch (button) {
            case RESTORE -> selected().forEach(one -> removeIf(choices.restore(one), one));
            case COMPARE -> compare();
            case DISCARD -> discard(selected());
            default -> super.buttonPressed(button);
        }
    }

    private void compare() {
        if (getButton(COMPARE).isEnabled()) {
            choices.compare(selected().get(0));
        }
    }

    private void discard(List<Left> unwanted) {
        if (choices.discard(unwanted)) {
            unwanted.forEach(one -> removeIf(true, one));
        }
    }

    private void removeIf(boolean done, Left gone) {
        if (done) {
            left.remove(gone);
            table.refresh();
            updateButtons();
        }
        if (left.isEmpty()) {
            close();
        }
    }

    private List<Left> selected() {
        return Stream.of(table.getStructuredSelection().toArray()).map(Left.class::cast).toList();
    }

    private void updateButtons() {
        List<RecoveryState> states = selected().stream().map(one -> RecoveryState.of(one.edits())).toList();
        enable(RESTORE, !states.isEmpty() && !states.contains(RecoveryState.NO_PROJECT));
        enable(COMPARE, states.size() == 1 && states.get(0).comparable());
        enable(DISCARD, !states.isEmpty());
    }

    private void enable(int button, boolean enabled) {
        if (getButton(button) != null) {
            getButton(button).setEnabled(enabled);
        }
    }
}
