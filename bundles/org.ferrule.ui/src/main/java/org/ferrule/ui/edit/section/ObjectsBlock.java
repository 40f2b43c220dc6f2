/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit.section;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.RemoveCommand;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.ui.forms.IFormColors;
import org.eclipse.ui.forms.IManagedForm;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.edit.field.FieldForm;
import org.ferrule.ui.look.ColumnRoom;

/** The objects that stand in a feature, in a table, with the fields of the one that is selected. */
public final class ObjectsBlock implements PartBlock {

    private static final int ROWS = 4;

    private final DocumentSession session;
    private final IManagedForm managed;
    private final EReference reference;
    private final List<ObjectColumn> columns;
    private final Table table;
    private final Composite fields;
    private final Composite buttons;
    private final FieldForm form;
    private final List<Button> forAll = new ArrayList<>();
    private final List<Button> forSelected = new ArrayList<>();
    private EObject object;

    /**
     * Creates a list.
     *
     * @param heading what stands above it; nothing if it is empty
     * @param adding adds the fields of one object
     */
    public ObjectsBlock(DocumentSession session, IManagedForm managed, Composite parent, String heading,
            EReference reference,
            List<ObjectColumn> columns, Consumer<FieldForm> adding) {
        this.session = session;
        this.managed = managed;
        this.reference = reference;
        this.columns = List.copyOf(columns);
        FormToolkit toolkit = managed.getToolkit();
        Composite block = toolkit.createComposite(parent);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(block);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(1, 3).applyTo(block);
        if (!heading.isEmpty()) {
            Label label = toolkit.createLabel(block, heading);
            label.setForeground(toolkit.getColors().getColor(IFormColors.TITLE));
            GridDataFactory.fillDefaults().span(2, 1).applyTo(label);
        }
        table = table(block);
        buttons = toolkit.createComposite(block);
        GridDataFactory.fillDefaults().applyTo(buttons);
        GridLayoutFactory.fillDefaults().spacing(0, 2).applyTo(buttons);
        forAll.add(button("Add", this::add));
        forSelected.add(button("Remove", this::remove));
        fields = toolkit.createComposite(parent);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(fields);
        form = new FieldForm(session, toolkit, fields);
        adding.accept(form);
        form.onReflow(() -> Reflow.around(managed, fields));
    }

    private Table table(Composite block) {
        Table made = managed.getToolkit().createTable(block,
                SWT.SINGLE | SWT.FULL_SELECTION | SWT.BORDER | SWT.V_SCROLL);
        made.setHeaderVisible(true);
        GridDataFactory.fillDefaults().grab(true, true)
                .hint(150, made.getHeaderHeight() + ROWS * made.getItemHeight()).applyTo(made);
        for (ObjectColumn each : columns) {
            TableColumn column = new TableColumn(made, SWT.NONE);
            column.setText(each.heading());
            column.setWidth(each.width());
        }
        ColumnRoom.share(made);
        made.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> showSelected()));
        return made;
    }

    private Button button(String text, Runnable work) {
        Button button = managed.getToolkit().createButton(buttons, text, SWT.PUSH);
        GridDataFactory.fillDefaults().applyTo(button);
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> work.run()));
        return button;
    }

    /** Adds a button that lets a value of the selected object be picked. */
    public ObjectsBlock picking(String label, EAttribute feature, Supplier<List<String>> picking) {
        forSelected.add(button(label,
                () -> picking.get().forEach(picked -> session.set(form.object(), feature, picked))));
        return this;
    }

    @Override
    public void show(EObject shown) {
        object = shown;
        int selected = table.getSelectionIndex();
        if (!texts().equals(List.of(table.getItems()).stream().map(this::texts).toList())) {
            table.removeAll();
            texts().forEach(texts -> new TableItem(table, SWT.NONE).setText(texts.toArray(String[]::new)));
            table.select(Math.min(Math.max(0, selected), objects().size() - 1));
        }
        showSelected();
        forAll.forEach(button -> button.setEnabled(object != null && session.editable()));
    }

    private List<EObject> objects() {
        return object == null ? List.of()
                : ((List<?>) object.eGet(reference)).stream().map(EObject.class::cast).toList();
    }

    private List<List<String>> texts() {
        return objects().stream().map(each -> columns.stream().map(column -> column.text(each)).toList()).toList();
    }

    private List<String> texts(TableItem item) {
        List<String> texts = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            texts.add(item.getText(i));
        }
        return texts;
    }

    private void showSelected() {
        int selected = table.getSelectionIndex();
        EObject chosen = selected < 0 ? null : objects().get(selected);
        if (form.object() != chosen) {
            form.show(chosen);
        } else {
            form.refreshMeanings();
        }
        forSelected.forEach(button -> button.setEnabled(chosen != null && session.editable()));
        showFields(chosen != null);
    }

    private void showFields(boolean shown) {
        GridData data = (GridData) fields.getLayoutData();
        if (data.exclude == shown) {
            data.exclude = !shown;
            fields.setVisible(shown);
            Reflow.around(managed, fields);
        }
    }

    private void add() {
        EObject added = EcoreUtil.create(reference.getEReferenceType());
        session.execute(AddCommand.create(session.domain(), object, reference, added));
        show(object);
        table.select(objects().indexOf(added));
        showSelected();
        fields.setFocus();
    }

    private void remove() {
        session.execute(RemoveCommand.create(session.domain(), form.object()));
        show(object);
    }

    @Override
    public boolean reveal(EObject wanted, EStructuralFeature feature) {
        int index = objects().indexOf(wanted);
        if (index < 0) {
            return wanted == object && feature == reference && table.setFocus();
        }
        table.select(index);
        showSelected();
        return feature == null ? table.setFocus() : form.reveal(wanted, feature);
    }
}
