/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.ui.escalation.form;

import java.util.List;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CommandWrapper;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.RemoveCommand;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.ui.forms.IManagedForm;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.ferrule.ui.look.DropDown;
import org.ferrule.model.CaseDocument;
import org.ferrule.model.LoggedAttempt;
import org.ferrule.model.ModelFactory;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.UsedUnit;
import org.ferrule.ui.edit.field.FieldForm;
import org.ferrule.ui.edit.section.PartBlock;
import org.ferrule.ui.edit.section.Reflow;
import org.ferrule.ui.escalation.live.LivePlan;
import org.ferrule.ui.look.ColumnRoom;

/** The boxes that were opened in a case, over all entries of its log, with the fields of the one that is selected. */
final class UnitsBlock implements PartBlock {

    private static final int ROWS = 4;
    private static final int ENTRY_WIDTH = 100;
    private static final int[] WIDTHS = { 150, 190, 90 };

    private final LivePlan live;
    private final IManagedForm managed;
    private final UnitChoices choices;
    private final Table table;
    private final DropDown entry;
    private final Button add;
    private final Button remove;
    private final Composite fields;
    private final FieldForm form;

    UnitsBlock(LivePlan live, IManagedForm managed, Composite parent) {
        this.live = live;
        this.managed = managed;
        this.choices = new UnitChoices(live);
        FormToolkit toolkit = managed.getToolkit();
        Composite block = toolkit.createComposite(parent);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(block);
        GridLayoutFactory.fillDefaults().numColumns(3).margins(1, 3).applyTo(block);
        table = toolkit.createTable(block, SWT.SINGLE | SWT.FULL_SELECTION | SWT.BORDER | SWT.V_SCROLL);
        columns("For", "Box", "Lot");
        GridDataFactory.fillDefaults().grab(true, true).span(3, 1)
                .hint(150, table.getHeaderHeight() + ROWS * table.getItemHeight()).applyTo(table);
        table.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> showSelected()));
        entry = new DropDown(block, ENTRY_WIDTH).explained("The entry of the log for which a box was opened");
        add = button(toolkit, block, "Add box", this::add);
        remove = button(toolkit, block, "Remove box", this::remove);
        fields = toolkit.createComposite(parent);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(fields);
        form = new FieldForm(live.session(), toolkit, fields);
        form.reference(Literals.USED_UNIT__ITEM, unit -> choices.items());
        form.reference(Literals.USED_UNIT__LOT, unit -> choices.lots((UsedUnit) unit));
        form.reference(Literals.USED_UNIT__ROLE, unit -> choices.roles((UsedUnit) unit));
        form.onReflow(() -> Reflow.around(managed, fields));
    }

    private void columns(String... titles) {
        table.setHeaderVisible(true);
        for (int i = 0; i < titles.length; i++) {
            TableColumn column = new TableColumn(table, SWT.NONE);
            column.setText(titles[i]);
            column.setWidth(WIDTHS[i]);
        }
        ColumnRoom.share(table);
    }

    private static Button button(FormToolkit toolkit, Composite parent, String text, Runnable work) {
        Button button = toolkit.createButton(parent, text, SWT.PUSH);
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> work.run()));
        return button;
    }

    private List<LoggedAttempt> log() {
        return live.file().map(CaseDocument::getLog).map(List::copyOf).orElse(List.of());
    }

    private List<UsedUnit> units() {
        return log().stream().flatMap(attempt -> attempt.getUnits().stream()).toList();
    }

    @Override
    public void show(EObject shown) {
        int selected = table.getSelectionIndex();
        table.setRedraw(false);
        table.removeAll();
        units().forEach(unit -> new TableItem(table, SWT.NONE).setText(texts(unit)));
        table.setRedraw(true);
        table.select(Math.min(Math.max(0, selected), table.getItemCount() - 1));
        showEntries();
        showSelected();
    }

    private String[] texts(UsedUnit unit) {
        LoggedAttempt attempt = (LoggedAttempt) unit.eContainer();
        return new String[] { numbered(attempt), choices.item(unit), unit.getLot() == null ? "" : unit.getLot() };
    }

    private String numbered(LoggedAttempt attempt) {
        return log().indexOf(attempt) + 1 + ". " + choices.move(attempt);
    }

    private void showEntries() {
        List<String> entries = log().stream().map(this::numbered).toList();
        boolean more = entries.size() != entry.words().size();
        entry.show(entries, more || entry.chosen() < 0 ? entries.size() - 1 : entry.chosen());
        boolean editable = live.session().editable() && !entries.isEmpty();
        entry.control().setEnabled(editable);
        add.setEnabled(editable);
    }

    private void showSelected() {
        int selected = table.getSelectionIndex();
        UsedUnit chosen = selected < 0 || selected >= units().size() ? null : units().get(selected);
        if (form.object() != chosen) {
            form.show(chosen);
        }
        remove.setEnabled(chosen != null && live.session().editable());
        GridData data = (GridData) fields.getLayoutData();
        if (data.exclude == (chosen != null)) {
            data.exclude = chosen == null;
            fields.setVisible(chosen != null);
            Reflow.around(managed, fields);
        }
    }

    private void add() {
        UsedUnit added = ModelFactory.eINSTANCE.createUsedUnit();
        LoggedAttempt attempt = log().get(entry.chosen());
        choices.roles(attempt).keySet().stream().findFirst().ifPresent(added::setRole);
        execute("Addition of a box", AddCommand.create(live.session().domain(), attempt,
                Literals.LOGGED_ATTEMPT__UNITS, added));
        show(null);
        select(added);
        fields.setFocus();
    }

    private void remove() {
        execute("Removal of a box", RemoveCommand.create(live.session().domain(), form.object()));
        show(null);
    }

    private void execute(String name, Command command) {
        live.session().execute(new CommandWrapper(name, "", command));
    }

    private void select(UsedUnit unit) {
        table.select(units().indexOf(unit));
        showSelected();
    }

    @Override
    public boolean reveal(EObject wanted, EStructuralFeature feature) {
        if (!(wanted instanceof UsedUnit unit) || !units().contains(unit)) {
            return false;
        }
        select(unit);
        return feature == null ? table.setFocus() : form.reveal(wanted, feature);
    }
}
