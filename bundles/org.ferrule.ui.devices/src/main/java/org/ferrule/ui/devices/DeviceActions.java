/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.ferrule.model.Device;
import org.ferrule.model.DeviceParts;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.ui.devices.clip.CellClipboard;
import org.ferrule.ui.devices.find.ReplaceCommand;
import org.ferrule.ui.devices.find.ReplaceDialog;
import org.ferrule.ui.devices.grid.GridSelection;
import org.ferrule.ui.devices.grid.SheetGrid;
import org.ferrule.ui.devices.next.NextSize;
import org.ferrule.ui.devices.next.NextSizeDialog;
import org.ferrule.ui.devices.part.Deletion;
import org.ferrule.ui.devices.part.EditContext;
import org.ferrule.ui.devices.part.PartEdits;
import org.ferrule.ui.devices.part.Shown;
import org.ferrule.ui.devices.sheet.CellClearing;
import org.ferrule.ui.devices.sheet.FillDown;
import org.ferrule.ui.devices.sheet.SheetRow;
import org.ferrule.ui.devices.table.FocusCommand;
import org.ferrule.ui.edit.CompareProfiles;
import org.ferrule.ui.edit.GrowthCurves;
import org.ferrule.ui.look.WrapRow;

/** What can be done with the rows and cells that are selected in the table: by buttons below it, and by keys. */
final class DeviceActions {

    private final EditContext context;
    private final EReference feature;
    private final Runnable showAll;
    private final Consumer<EObject> want;
    private SheetGrid grid;
    private Button add;
    private Button duplicate;
    private Button next;
    private Button delete;

    /**
     * Creates the actions.
     *
     * @param feature the devices or the lines of a library
     * @param showAll lets nothing hide what is about to be added
     * @param want is told what is to be selected when it is listed
     */
    DeviceActions(EditContext context, EReference feature, Runnable showAll, Consumer<EObject> want) {
        this.context = context;
        this.feature = feature;
        this.showAll = showAll;
        this.want = want;
    }

    /** Creates the buttons, and lets the keys of the workbench work on the table. */
    void connect(SheetGrid table, Composite parent) {
        grid = table;
        Composite row = new WrapRow(parent, 4).control();
        add = button(row, "Add", this::add);
        duplicate = button(row, "Duplicate", this::duplicate);
        if (feature == Literals.DEVICE_LIBRARY__DEVICES) {
            next = button(row, "Next size...", this::nextSize);
            next.setToolTipText("Duplicates a size as the next one of its line");
        }
        delete = button(row, "Delete", this::deleteDevices);
        button(row, "Find...", this::find).setToolTipText("Finds and replaces texts in all fields");
        CellClipboard clipboard = new CellClipboard(grid, context.session(), feature);
        bind(IWorkbenchCommandConstants.EDIT_DELETE, this::deleteSelected);
        bind(IWorkbenchCommandConstants.EDIT_COPY, clipboard::copy);
        bind(IWorkbenchCommandConstants.EDIT_PASTE, clipboard::paste);
        bind(IWorkbenchCommandConstants.EDIT_SELECT_ALL, grid::selectAll);
        bind(IWorkbenchCommandConstants.EDIT_FIND_AND_REPLACE, this::find);
        SelectedDevices devices = new SelectedDevices(context.session(), grid);
        createMenu(clipboard, devices);
        DeviceDrag.from(grid.control(), devices);
    }

    private void createMenu(CellClipboard clipboard, SelectedDevices devices) {
        List<MenuItem> changing = new ArrayList<>();
        DeviceMenu menu = new DeviceMenu(grid.control(), () -> changing.forEach(item -> item.setEnabled(editable())));
        changing.add(menu.add("Edit cell", "F2", grid::edit));
        changing.add(menu.add("Fill down", "Ctrl+D", this::fillDown));
        menu.separator();
        menu.add("Copy", "Ctrl+C", clipboard::copy);
        changing.add(menu.add("Paste...", "Ctrl+V", clipboard::paste));
        menu.separator();
        changing.add(menu.add("Add", "Insert", this::add));
        changing.add(menu.add("Delete", "Delete", this::deleteSelected));
        menu.separator();
        menu.add("Find and replace...", "Ctrl+F", this::find);
        menu.separator();
        menu.add(new CompareProfiles(devices::all));
        menu.add(new GrowthCurves(devices::balloons));
    }

    private Button button(Composite parent, String text, Runnable action) {
        Button button = context.toolkit().createButton(parent, text, SWT.PUSH);
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> action.run()));
        return button;
    }

    private void bind(String command, Runnable action) {
        FocusCommand.bind(grid.control(), context.services(), command, action);
    }

    /** Enables what can be done with so many rows. */
    void enable(int selected) {
        boolean editable = editable();
        add.setEnabled(editable);
        duplicate.setEnabled(editable && selected == 1);
        if (next != null) {
            next.setEnabled(editable && selected == 1);
        }
        delete.setEnabled(editable && selected > 0);
    }

    private boolean editable() {
        return context.session().editable();
    }

    private List<DeviceParts> selected() {
        return grid.selection().rows().stream().map(SheetRow::parts).toList();
    }

    private Shell shell() {
        return grid.control().getShell();
    }

    private PartEdits edits() {
        return new PartEdits(context.session());
    }

    /** Adds a device or a line. */
    void add() {
        if (editable()) {
            showAll.run();
            want.accept(edits().add(Shown.of(context.session().document().orElseThrow()), feature));
        }
    }

    private void duplicate() {
        want.accept(edits().duplicate(selected().get(0)));
    }

    private void nextSize() {
        NextSizeDialog dialog = new NextSizeDialog(shell(), context.session(),
                new NextSize((Device) selected().get(0)));
        dialog.open();
        dialog.added().ifPresent(want);
    }

    private void find() {
        ReplaceDialog dialog = new ReplaceDialog(shell(), grid.listing().all().stream().map(SheetRow::parts).toList(),
                selected(), editable());
        dialog.open();
        new ReplaceCommand(context.session()).run(dialog.chosen());
        dialog.goal().ifPresent(context.goTo());
    }

    /** Copies the uppermost selected cells into those below. */
    void fillDown() {
        GridSelection selection = grid.selection();
        if (editable()) {
            new FillDown(context.session()).run(selection.rows(), selection.columns(), selection::has)
                    .ifPresent(grid::tell);
        }
    }

    /** Whole rows stand for devices, single cells for what they hold. */
    private void deleteSelected() {
        GridSelection selection = grid.selection();
        if (selection.wholeRows()) {
            deleteDevices();
        } else if (editable()) {
            new CellClearing(context.session()).clear(selection.rows(), selection.columns(), selection::has)
                    .ifPresent(grid::tell);
        }
    }

    private void deleteDevices() {
        List<EObject> chosen = List.copyOf(selected());
        if (!chosen.isEmpty() && editable() && Deletion.isConfirmed(chosen, shell())) {
            edits().delete(chosen);
        }
    }
}
