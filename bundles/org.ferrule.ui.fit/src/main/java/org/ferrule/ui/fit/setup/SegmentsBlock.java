/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.setup;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.RemoveCommand;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.ui.forms.IManagedForm;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.ferrule.model.ModelFactory;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.VesselPath;
import org.ferrule.model.VesselSegment;
import org.ferrule.quantity.Dimension;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.edit.field.FieldForm;

/** The segments of a vessel path from the ostium on, with the fields of the one that is selected. */
final class SegmentsBlock implements PartBlock {

    private static final int HEIGHT = 84;
    private static final int COLUMN = 110;

    private final DocumentSession session;
    private final Table table;
    private final FieldForm form;
    private final List<Button> buttons = new ArrayList<>();
    private VesselPath path;

    SegmentsBlock(DocumentSession session, IManagedForm managed, Composite parent) {
        this.session = session;
        FormToolkit toolkit = managed.getToolkit();
        Composite block = toolkit.createComposite(parent);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(block);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(1, 3).applyTo(block);
        table = toolkit.createTable(block, SWT.SINGLE | SWT.FULL_SELECTION | SWT.BORDER | SWT.V_SCROLL);
        GridDataFactory.fillDefaults().grab(true, true).hint(150, HEIGHT).applyTo(table);
        table.setHeaderVisible(true);
        for (String heading : List.of("Segment", "Length", "Diameter")) {
            TableColumn column = new TableColumn(table, SWT.NONE);
            column.setText(heading);
            column.setWidth(COLUMN);
        }
        table.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> showSelected()));
        addButtons(toolkit, block);
        Composite grid = toolkit.createComposite(parent);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(grid);
        form = fields(managed, grid);
    }

    private void addButtons(FormToolkit toolkit, Composite block) {
        Composite column = toolkit.createComposite(block);
        GridLayoutFactory.fillDefaults().spacing(0, 2).applyTo(column);
        button(toolkit, column, "Add", this::add);
        button(toolkit, column, "Remove", this::remove);
    }

    private void button(FormToolkit toolkit, Composite column, String text, Runnable work) {
        Button button = toolkit.createButton(column, text, SWT.PUSH);
        GridDataFactory.fillDefaults().applyTo(button);
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> work.run()));
        buttons.add(button);
    }

    private FieldForm fields(IManagedForm managed, Composite grid) {
        FieldForm fields = new FieldForm(session, managed.getToolkit(), grid);
        fields.text(Literals.VESSEL_SEGMENT__NAME);
        fields.dimension(Literals.VESSEL_SEGMENT__LENGTH);
        fields.dimension(Literals.VESSEL_SEGMENT__DIAMETER);
        fields.dimension(Literals.VESSEL_SEGMENT__BEND_RADIUS);
        fields.text(Literals.VESSEL_SEGMENT__BEND_ANGLE_DEGREES);
        fields.onReflow(() -> managed.reflow(true));
        return fields;
    }

    @Override
    public void show(EObject shown) {
        path = (VesselPath) shown;
        int selected = table.getSelectionIndex();
        table.removeAll();
        segments().forEach(this::addItem);
        table.select(Math.min(Math.max(0, selected), segments().size() - 1));
        showSelected();
        buttons.forEach(button -> button.setEnabled(path != null && session.editable()));
    }

    private List<VesselSegment> segments() {
        return path == null ? List.of() : path.getSegments();
    }

    private void addItem(VesselSegment segment) {
        new TableItem(table, SWT.NONE).setText(new String[] { segment.getName() == null ? "" : segment.getName(),
            text(segment.getLength()), text(segment.getDiameter()) });
    }

    private static String text(Dimension dimension) {
        return dimension == null ? "" : dimension.text();
    }

    private void showSelected() {
        int selected = table.getSelectionIndex();
        VesselSegment segment = selected < 0 ? null : segments().get(selected);
        if (form.object() != segment) {
            form.show(segment);
        }
    }

    private void add() {
        VesselSegment segment = ModelFactory.eINSTANCE.createVesselSegment();
        segment.setName("segment " + (segments().size() + 1));
        Command adding = AddCommand.create(session.domain(), path, Literals.VESSEL_PATH__SEGMENTS, segment);
        session.execute(adding);
        show(path);
        table.select(segments().size() - 1);
        showSelected();
    }

    private void remove() {
        int selected = table.getSelectionIndex();
        if (selected >= 0) {
            session.execute(RemoveCommand.create(session.domain(), segments().get(selected)));
            show(path);
        }
    }

    @Override
    public boolean reveal(EObject wanted, EStructuralFeature feature) {
        int index = segments().indexOf(wanted);
        if (index < 0) {
            return false;
        }
        table.select(index);
        showSelected();
        return feature == null ? table.setFocus() : form.reveal(wanted, feature);
    }
}
