/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.part;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.ferrule.ui.devices.table.RowTable;
import org.ferrule.ui.edit.order.ElementMoves;
import org.ferrule.ui.look.ColumnRoom;
import org.ferrule.ui.look.ModelLabels;

/** A list of parts with buttons, and the form of the part that is selected. */
public final class PartList implements PartView {

    private static final int LEAST_ROWS = 2;
    private static final int MOST_ROWS = 7;

    private final EditContext context;
    private final PartLayout layout;
    private final RowTable<Shown> table;
    private final ListButtons buttons;
    private final PartForm form;
    private final ElementMoves moves;
    private final boolean growing;
    private Runnable listener = () -> {
    };
    private Shown holder;
    private EObject wanted;

    private PartList(EditContext context, PartLayout layout, Composite list, Composite details, boolean growing) {
        this.context = context;
        this.layout = layout;
        this.growing = growing;
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(6, 6).applyTo(list);
        table = new RowTable<>(list, SWT.MULTI, layout.columns().stream().map(CellWords::column).toList());
        ColumnRoom.share(table.control());
        GridDataFactory.fillDefaults().grab(true, !growing).hint(100, 60).applyTo(table.control());
        buttons = new ListButtons(context.toolkit(), list);
        buttons.add("Add", this::add).add("Delete", this::delete).add("Up", () -> step(-1)).add("Down", () -> step(1));
        form = new PartForm(context, details, layout.feature().getEReferenceType(), layout.children());
        GridDataFactory.fillDefaults().grab(true, false).applyTo(form.control());
        table.onSelect(this::showSelected);
        DeleteKey.bind(table.control(), context.services(), this::delete);
        table.onKey(SWT.INSERT, this::add);
        moves = new PartMoves(context.session(), table).moves();
    }

    /** Creates a list with the form below it, under a title; the list is as high as its rows need. */
    static PartList below(EditContext context, Composite parent, PartLayout layout) {
        Label title = context.toolkit().createLabel(parent, ModelLabels.feature(layout.feature()));
        title.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
        title.setToolTipText(ModelLabels.description(layout.feature()));
        return stacked(context, parent, layout);
    }

    /** Creates a list with the form below it; the list is as high as its rows need. */
    public static PartList stacked(EditContext context, Composite parent, PartLayout layout) {
        Composite list = context.toolkit().createComposite(parent);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(list);
        return new PartList(context, layout, list, parent, true);
    }

    /** Creates a list in one composite that fills it, and the form in another. */
    public static PartList beside(EditContext context, Composite list, Composite details, PartLayout layout) {
        return new PartList(context, layout, list, details, false);
    }

    /** Sets what is done when another part is selected, by the user or otherwise. */
    public void onSelect(Runnable action) {
        listener = action;
    }

    /** Returns the part that is selected, if it is only one. */
    public Optional<Shown> selected() {
        return table.selection().size() == 1 ? Optional.of(table.selection().get(0)) : Optional.empty();
    }

    @Override
    public void show(Shown newHolder) {
        boolean other = holder == null || newHolder == null || !holder.isSamePart(newHolder);
        holder = newHolder;
        int index = other ? 0 : Math.max(0, table.control().getSelectionIndex());
        table.setRows(holder == null ? List.of() : holder.parts(layout.feature()));
        if (table.selection().isEmpty() && !table.rows().isEmpty()) {
            table.select(table.rows().get(Math.min(index, table.rows().size() - 1)));
        }
        boolean added = wanted != null && select(row -> row.own().orElse(null) == wanted);
        makeRoom();
        showSelected();
        if (added) {
            wanted = null;
            form.focus();
        }
    }

    private void makeRoom() {
        Table widget = table.control();
        int rows = Math.max(LEAST_ROWS, Math.min(MOST_ROWS, table.rows().size()));
        int height = widget.getHeaderHeight() + rows * widget.getItemHeight() + 2 * widget.getBorderWidth() + 6;
        GridData data = (GridData) widget.getLayoutData();
        if (growing && data.heightHint != height) {
            data.heightHint = height;
            context.reflow().run();
        }
    }

    private boolean select(Predicate<Shown> condition) {
        return table.rows().stream().filter(condition).findFirst().filter(table::select).isPresent();
    }

    /** Selects the part with the number, counted as the holder lists its parts from 0. */
    public void select(int index) {
        List<Shown> parts = holder == null ? List.of() : holder.parts(layout.feature());
        if (index >= 0 && index < parts.size() && table.select(parts.get(index))) {
            showSelected();
        }
    }

    /** Selects the part with the name. */
    public void select(String name) {
        EStructuralFeature feature = layout.feature().getEReferenceType().getEStructuralFeature("name");
        if (select(row -> name.equals(row.complete().eGet(feature)))) {
            showSelected();
        }
    }

    private void showSelected() {
        form.show(selected().orElse(null));
        showForm(selected().isPresent());
        updateButtons(table.selection());
        listener.run();
    }

    private void showForm(boolean needed) {
        if (form.control().getVisible() != needed) {
            form.control().setVisible(needed);
            ((GridData) form.control().getLayoutData()).exclude = !needed;
            context.reflow().run();
        }
    }

    private void updateButtons(List<Shown> selection) {
        boolean editable = context.session().editable() && holder != null;
        boolean own = editable && !selection.isEmpty() && selection.stream().noneMatch(Shown::isInherited);
        buttons.enable(editable, own, moves.canStep(-1), moves.canStep(1));
    }

    private void step(int by) {
        moves.step(by);
    }

    private void add() {
        if (context.session().editable() && holder != null) {
            wanted = edits().add(holder, feature());
        }
    }

    private void delete() {
        List<EObject> own = table.selection().stream().flatMap(row -> row.own().stream()).toList();
        if (!own.isEmpty() && context.session().editable() && Deletion.isConfirmed(own, table.control().getShell())) {
            edits().delete(own);
        }
    }

    private PartEdits edits() {
        return new PartEdits(context.session());
    }

    private EReference feature() {
        return layout.feature();
    }

    @Override
    public boolean reveal(EObject part, EStructuralFeature feature) {
        if (!select(row -> EcoreUtil.isAncestor(row.stater(), part))) {
            return false;
        }
        showSelected();
        return form.reveal(part, feature);
    }

    /** Puts the cursor into the list. */
    public void focus() {
        table.control().setFocus();
    }
}
