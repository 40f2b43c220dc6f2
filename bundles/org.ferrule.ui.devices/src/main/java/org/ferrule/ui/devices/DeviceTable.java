/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.ferrule.model.DeviceParts;
import org.ferrule.model.ElementPath;
import org.ferrule.ui.devices.grid.GridActions;
import org.ferrule.ui.devices.grid.SheetGrid;
import org.ferrule.ui.devices.part.EditContext;
import org.ferrule.ui.devices.sheet.Choice;
import org.ferrule.ui.devices.sheet.Listing;
import org.ferrule.ui.devices.sheet.SheetColumn;
import org.ferrule.ui.devices.sheet.SheetColumns;
import org.ferrule.ui.devices.sheet.SheetProblems;
import org.ferrule.ui.devices.sheet.SheetRow;
import org.ferrule.ui.devices.sheet.SheetRows;
import org.ferrule.ui.devices.sheet.SourceAge;
import org.ferrule.ui.document.DocumentChange;
import org.ferrule.ui.look.Colours;
import org.ferrule.ui.look.ThemeChange;

/** The table of all devices, or of all lines, with what chooses rows above it and what can be done below it. */
final class DeviceTable {

    private static final int FILTER_DELAY_MS = 120;

    private final EditContext context;
    private final EReference feature;
    private final SheetRows rows;
    private final SheetProblems problems;
    private final Listing listing;
    private final Composite root;
    private final Text filter;
    private final Label count;
    private final SheetGrid grid;
    private final ChoiceBar choices;
    private final DeviceActions actions;
    private final Runnable filtering = this::relist;
    private Consumer<Optional<DeviceParts>> listener = device -> {
    };
    private Consumer<List<SheetRow>> severalListener = several -> {
    };
    private DeviceParts shown;
    private EObject wanted;

    DeviceTable(EditContext context, SashForm parent, EReference feature) {
        this.context = context;
        this.feature = feature;
        rows = new SheetRows(context.session(), feature);
        problems = new SheetProblems(context.session());
        listing = new Listing(new Choice(problems, new SourceAge(LocalDate.now())));
        root = context.toolkit().createComposite(parent);
        GridLayoutFactory.fillDefaults().spacing(0, 6).extendedMargins(0, 6, 0, 0).applyTo(root);
        actions = new DeviceActions(context, feature, this::showAll, added -> wanted = added);
        Composite top = context.toolkit().createComposite(root);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(8, 0).applyTo(top);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(top);
        filter = new Text(top, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
        filter.setMessage("Filter by id, name, maker, kind, size or code");
        filter.setToolTipText("Shows what has all of these words");
        GridDataFactory.fillDefaults().grab(true, false).applyTo(filter);
        count = context.toolkit().createLabel(top, "", SWT.RIGHT);
        ThemeChange.text(count, Colours::muted);
        Composite bar = context.toolkit().createComposite(root);
        GridLayoutFactory.fillDefaults().applyTo(bar);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(bar);
        grid = new SheetGrid(root, listing, SheetColumns.of(feature, problems), problems, context.session(),
                new GridActions(actions::add, actions::fillDown), feature.getName());
        GridDataFactory.fillDefaults().grab(true, true).hint(200, 120).applyTo(grid.control());
        choices = new ChoiceBar(bar, feature, grid, this::relist, this::showAlone);
        actions.connect(grid, root);
        listen();
    }

    private void showAlone(boolean alone) {
        ((SashForm) root.getParent()).setMaximizedControl(alone ? root : null);
    }

    private void listen() {
        filter.addModifyListener(event -> filter.getDisplay().timerExec(FILTER_DELAY_MS, filtering));
        filter.addListener(SWT.KeyDown, event -> {
            if (event.keyCode == SWT.ARROW_DOWN) {
                grid.control().setFocus();
            }
        });
        grid.onSelect(this::selected);
    }

    /** Sets what is done when another device is selected, by the user or otherwise. */
    void onSelect(Consumer<Optional<DeviceParts>> action) {
        listener = action;
    }

    /** Sets what is done when several rows are selected: it gets them, or none when they are no more. */
    void onSeveral(Consumer<List<SheetRow>> action) {
        severalListener = action;
    }

    /** Returns the columns in their first order. */
    List<SheetColumn> columns() {
        return grid.columns();
    }

    /** Shows the devices of the document as it is now. */
    void fill() {
        if (grid.control().isDisposed()) {
            return;
        }
        int index = firstSelectedLine();
        if (hasMoved()) {
            selectSomething(index);
        } else {
            grid.redraw();
        }
        showCount();
        selected();
    }

    /** Lines are moved only when rows come or go. */
    private boolean hasMoved() {
        List<SheetRow> now = rows.all();
        boolean[] moved = new boolean[1];
        if (listing.all().size() == now.size() && listing.all().equals(now)) {
            listing.update(now);
        } else {
            grid.moveLines(() -> moved[0] = listing.update(now));
        }
        return moved[0];
    }

    private void relist() {
        if (grid.control().isDisposed()) {
            return;
        }
        listing.choice().search(filter.getText());
        int index = firstSelectedLine();
        grid.moveLines(listing::relist);
        choices.refresh();
        selectSomething(index);
        showCount();
        selected();
    }

    private int firstSelectedLine() {
        List<SheetRow> before = grid.selection().rows();
        return before.isEmpty() ? 0 : listing.find(before.get(0).parts()).orElse(0);
    }

    private void showCount() {
        int all = listing.all().size();
        count.setText(listing.shown() == all ? String.valueOf(all) : listing.shown() + " of " + all);
        count.getParent().layout();
    }

    private void selectSomething(int index) {
        if (wanted != null && select(wanted)) {
            wanted = null;
        } else if (grid.selection().rows().isEmpty() && !listing.lines().isEmpty()) {
            Optional<EObject> before = Optional.ofNullable(shown).flatMap(device -> context.session().document()
                    .flatMap(document -> ElementPath.resolve(document, ElementPath.of(device))));
            if (before.isEmpty() || !isListed(before.get()) || !select(before.get())) {
                nearest(index).ifPresent(row -> select(row.parts()));
            }
        }
    }

    private boolean isListed(EObject device) {
        return device instanceof DeviceParts parts && listing.place(parts).isPresent();
    }

    private Optional<SheetRow> nearest(int index) {
        int from = Math.min(index, listing.lines().size() - 1);
        return listing.lines().subList(from, listing.lines().size()).stream().flatMap(line -> line.row().stream())
                .findFirst();
    }

    private boolean select(EObject device) {
        return device instanceof DeviceParts parts && grid.select(parts);
    }

    private void selected() {
        List<SheetRow> selection = grid.selection().rows();
        Optional<DeviceParts> one = selection.size() == 1 ? Optional.of(selection.get(0).parts()) : Optional.empty();
        shown = one.orElse(shown);
        actions.enable(selection.size());
        listener.accept(one);
        severalListener.accept(selection.size() > 1 ? selection : List.of());
    }

    /** Lets nothing hide what is about to be shown. */
    private void showAll() {
        filter.setText("");
        listing.choice().clear();
        relist();
    }

    /** Shows a device of the table, whatever was chosen if that hides it. */
    boolean reveal(EObject device) {
        if (device.eContainmentFeature() != feature) {
            return false;
        }
        if (!select(device)) {
            showAll();
            select(device);
        }
        selected();
        return true;
    }

    /** Follows the document. */
    void documentChanged(DocumentChange change) {
        if (change.reloaded()) {
            grid.forgetUnreadable();
        }
        rows.forget(change);
        fill();
    }

    /** Shows the problems as they were found last. */
    void problemsChanged() {
        problems.refresh();
        if (!grid.control().isDisposed()) {
            grid.redraw();
        }
    }

    /** Makes what is being typed part of the document. */
    void finishTyping() {
        grid.finishTyping();
    }

    /** Puts the cursor into the table. */
    void focus() {
        grid.control().setFocus();
    }
}
