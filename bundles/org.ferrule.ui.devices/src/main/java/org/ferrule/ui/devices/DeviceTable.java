/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.ferrule.model.Device;
import org.ferrule.model.DeviceParts;
import org.ferrule.model.ElementPath;
import org.ferrule.ui.Services;
import org.ferrule.ui.devices.part.DeleteKey;
import org.ferrule.ui.devices.part.Deletion;
import org.ferrule.ui.devices.part.EditContext;
import org.ferrule.ui.devices.part.PartEdits;
import org.ferrule.ui.devices.part.Shown;
import org.ferrule.ui.devices.table.RowTable;
import org.ferrule.ui.document.DeviceReference;
import org.ferrule.ui.document.DocumentChange;
import org.ferrule.ui.edit.CompareProfiles;
import org.ferrule.ui.look.Colours;
import org.ferrule.ui.preferences.UnitPreferences;

/** The table of all devices, or of all lines, with a filter above it and what can be done below it. */
final class DeviceTable {

    private static final int FILTER_DELAY_MS = 120;

    private final EditContext context;
    private final EReference feature;
    private final DeviceRows rows;
    private final DeviceProblems problems;
    private final Text filter;
    private final Label count;
    private final RowTable<DeviceRow> table;
    private final UnitPreferences units = Services.get(UnitPreferences.class);
    private final Runnable filtering = this::fill;
    private Button add;
    private Button duplicate;
    private Button delete;
    private Consumer<Optional<DeviceParts>> listener = device -> {
    };
    private String shownPath = "";
    private EObject wanted;

    DeviceTable(EditContext context, Composite parent, EReference feature) {
        this.context = context;
        this.feature = feature;
        rows = new DeviceRows(context.session(), feature);
        problems = new DeviceProblems(context.session());
        Composite root = context.toolkit().createComposite(parent);
        GridLayoutFactory.fillDefaults().spacing(0, 6).extendedMargins(0, 6, 0, 0).applyTo(root);
        Composite top = row(root);
        filter = new Text(top, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
        filter.setMessage("Filter by id, name, maker, kind, size or code");
        filter.setToolTipText("Shows what has all of these words");
        GridDataFactory.fillDefaults().grab(true, false).applyTo(filter);
        count = context.toolkit().createLabel(top, "", SWT.RIGHT);
        count.setForeground(Colours.muted());
        table = new RowTable<>(root, SWT.MULTI, new DeviceColumns(problems).create());
        GridDataFactory.fillDefaults().grab(true, true).hint(200, 120).applyTo(table.control());
        createButtons(row(root));
        listen();
    }

    private Composite row(Composite parent) {
        Composite row = context.toolkit().createComposite(parent);
        GridLayoutFactory.fillDefaults().numColumns(3).spacing(8, 0).applyTo(row);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(row);
        return row;
    }

    private void createButtons(Composite row) {
        add = button(row, "Add", this::add);
        duplicate = button(row, "Duplicate", this::duplicate);
        delete = button(row, "Delete", this::delete);
    }

    private Button button(Composite parent, String text, Runnable action) {
        Button button = context.toolkit().createButton(parent, text, SWT.PUSH);
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> action.run()));
        GridDataFactory.fillDefaults().hint(96, SWT.DEFAULT).applyTo(button);
        return button;
    }

    private void listen() {
        filter.addModifyListener(event -> filter.getDisplay().timerExec(FILTER_DELAY_MS, filtering));
        filter.addListener(SWT.KeyDown, event -> {
            if (event.keyCode == SWT.ARROW_DOWN) {
                table.control().setFocus();
            }
        });
        table.onSelect(this::selected);
        table.onKey(SWT.INSERT, this::add);
        MenuManager menu = new MenuManager();
        menu.add(new CompareProfiles(this::references));
        menu.addMenuListener(manager -> manager.updateAll(true));
        table.control().setMenu(menu.createContextMenu(table.control()));
        DeleteKey.bind(table.control(), context.services(), this::delete);
        Runnable unitsChanged = () -> table.control().getDisplay().asyncExec(this::refresh);
        units.addListener(unitsChanged);
        table.control().addDisposeListener(event -> units.removeListener(unitsChanged));
    }

    /** Sets what is done when another device is selected, by the user or otherwise. */
    void onSelect(Consumer<Optional<DeviceParts>> action) {
        listener = action;
    }

    /** Shows the devices that pass the filter. */
    void fill() {
        if (table.control().isDisposed()) {
            return;
        }
        int index = Math.max(0, table.control().getSelectionIndex());
        List<DeviceRow> all = rows.all();
        List<DeviceRow> passing = all.stream().filter(row -> row.matches(filter.getText().strip())).toList();
        table.setRows(passing);
        count.setText(passing.size() == all.size() ? String.valueOf(all.size()) : passing.size() + " of " + all.size());
        count.getParent().layout();
        selectSomething(index);
        selected();
    }

    private void selectSomething(int index) {
        if (wanted != null && select(wanted)) {
            wanted = null;
        } else if (table.selection().isEmpty() && !table.rows().isEmpty()) {
            Optional<EObject> before = context.session().document()
                    .flatMap(document -> ElementPath.resolve(document, shownPath));
            if (before.isEmpty() || !select(before.get())) {
                table.select(table.rows().get(Math.min(index, table.rows().size() - 1)));
            }
        }
    }

    private boolean select(EObject device) {
        return device instanceof DeviceParts parts && table.select(new DeviceRow(parts, null));
    }

    private void selected() {
        Optional<DeviceParts> one = selection().size() == 1 ? Optional.of(selection().get(0)) : Optional.empty();
        one.ifPresent(device -> shownPath = ElementPath.of(device));
        boolean editable = context.session().editable();
        add.setEnabled(editable);
        duplicate.setEnabled(editable && one.isPresent());
        delete.setEnabled(editable && !selection().isEmpty());
        listener.accept(one);
    }

    private List<DeviceParts> selection() {
        return table.selection().stream().map(DeviceRow::parts).toList();
    }

    /** What is selected, as other parts of the workbench know it; lines are no devices. */
    private List<DeviceReference> references() {
        return selection().stream().filter(Device.class::isInstance).map(Device.class::cast)
                .filter(device -> device.getId() != null)
                .map(device -> new DeviceReference(context.session().file(), device.getId())).toList();
    }

    private void add() {
        if (context.session().editable()) {
            filter.setText("");
            wanted = edits().add(Shown.of(context.session().document().orElseThrow()), feature);
        }
    }

    private void duplicate() {
        wanted = edits().duplicate(selection().get(0));
    }

    private void delete() {
        List<EObject> chosen = List.copyOf(selection());
        if (!chosen.isEmpty() && context.session().editable()
                && Deletion.isConfirmed(chosen, table.control().getShell())) {
            edits().delete(chosen);
        }
    }

    private PartEdits edits() {
        return new PartEdits(context.session());
    }

    /** Shows a device of the table, without the filter if that hides it. */
    boolean reveal(EObject device) {
        if (device.eContainmentFeature() != feature) {
            return false;
        }
        if (!select(device)) {
            filter.setText("");
            fill();
            select(device);
        }
        selected();
        return true;
    }

    /** Follows the document. */
    void documentChanged(DocumentChange change) {
        rows.forget(change);
        fill();
    }

    /** Shows the problems as they were found last. */
    void problemsChanged() {
        problems.refresh();
        refresh();
    }

    private void refresh() {
        if (!table.control().isDisposed()) {
            table.refresh();
        }
    }

    /** Puts the cursor into the table. */
    void focus() {
        table.control().setFocus();
    }
}
