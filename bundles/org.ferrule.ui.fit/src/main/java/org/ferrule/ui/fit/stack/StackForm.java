/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.stack;

import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.function.UnaryOperator;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.ui.fit.passage.DeviceField;
import org.ferrule.ui.fit.passage.ProjectDevices;
import org.ferrule.ui.fit.passage.RulesChoice;
import org.ferrule.ui.look.Tick;

/** Where a stack is filled in: its devices, how the selected one lies, the vessel around and the rules. */
final class StackForm implements StackTable.Acts {

    private static final int LEAST_WIDTH = 80;

    private final Runnable changed;
    private final DeviceField add;
    private final StackTable table;
    private final Button up;
    private final Button down;
    private final Button remove;
    private final Text ahead;
    private final DeviceField wire;
    private final Button used;
    private final Button beside;
    private final Text vessel;
    private final RulesChoice rules;
    private StackRequest request = StackRequest.EMPTY;
    private ProjectDevices project = ProjectDevices.NONE;
    private boolean showing;

    /**
     * Creates the form in a grid of one column.
     *
     * @param changed is run when something else is asked
     * @param selected is told which device is selected; -1 for none
     */
    StackForm(Composite parent, Runnable changed, IntConsumer selected) {
        this.changed = changed;
        Composite top = pairs(parent);
        add = new DeviceField(top, "Add", device -> true, this::add);
        add.control().setToolTipText("Type any words of its name, kind, size or maker; Ctrl+Space lists all devices. "
                + "It goes inside all others");
        table = new StackTable(parent, index -> {
            showSelected();
            selected.accept(index);
        }, this);
        Composite buttons = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(3).spacing(4, 0).applyTo(buttons);
        up = button(buttons, "Further out", () -> move(-1));
        down = button(buttons, "Further in", () -> move(1));
        remove = button(buttons, "Remove", this::remove);
        Composite fields = pairs(parent);
        ahead = text(fields, "Tip beyond", "0 mm; negative inside",
                "How far the tip of the selected device lies beyond the tip of what holds it");
        ahead.addModifyListener(event -> change(e -> e.ahead(ahead.getText().strip())));
        wire = new DeviceField(fields, "Over wire", device -> device.kind() == DeviceKind.GUIDEWIRE, this::overWire);
        wire.control().setMessage("the largest that it takes");
        used = check(fields, "Used before",
                "The selected device has its outline after use, such as a re-wrapped balloon");
        used.addSelectionListener(
                SelectionListener.widgetSelectedAdapter(event -> change(e -> e.used(used.getSelection()))));
        beside = check(fields, "Beside the next one",
                "It lies in the same lumen as the device below it, and holds nothing");
        beside.addSelectionListener(
                SelectionListener.widgetSelectedAdapter(event -> change(e -> e.beside(beside.getSelection()))));
        vessel = text(fields, "Vessel", "not known, or such as 2.4 mm",
                "Inner diameter of the vessel around the outermost device");
        vessel.addModifyListener(event -> change());
        rules = new RulesChoice(labelled(fields, "Rules"), this::change);
        showSelected();
    }

    private static Composite pairs(Composite parent) {
        Composite pairs = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(8, 4).applyTo(pairs);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(pairs);
        return pairs;
    }

    private static Composite labelled(Composite parent, String label) {
        new Label(parent, SWT.NONE).setText(label);
        return parent;
    }

    private static Text text(Composite parent, String label, String message, String explained) {
        Text text = new Text(labelled(parent, label), SWT.BORDER);
        text.setMessage(message);
        text.setToolTipText(explained);
        GridDataFactory.fillDefaults().grab(true, false).hint(LEAST_WIDTH, SWT.DEFAULT).applyTo(text);
        return text;
    }

    private static Button check(Composite parent, String label, String explained) {
        Button box = Tick.box(labelled(parent, ""), label);
        box.setToolTipText(explained);
        return box;
    }

    private static Button button(Composite parent, String text, Runnable work) {
        Button button = new Button(parent, SWT.PUSH);
        button.setText(text);
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> work.run()));
        return button;
    }

    private void add() {
        String reference = add.reference();
        if (!reference.isEmpty()) {
            add.show("");
            show(project, request.withMore(StackEntry.of(reference)));
            select(request.entries().size() - 1);
            changed.run();
        }
    }

    @Override
    public void remove() {
        int index = table.selected();
        if (index >= 0) {
            show(project, request.without(index));
            changed.run();
        }
    }

    @Override
    public void move(int by) {
        int to = table.selected() + by;
        if (table.selected() >= 0 && to >= 0 && to < request.entries().size()) {
            show(project, request.moved(table.selected(), to));
            select(to);
            changed.run();
        }
    }

    private void overWire() {
        change(entry -> entry.over(wire.reference()));
    }

    private void change(UnaryOperator<StackEntry> change) {
        int index = table.selected();
        if (!showing && index >= 0) {
            StackEntry before = request.entries().get(index);
            StackEntry after = change.apply(before);
            request = request.with(index, after);
            if (before.beside() != after.beside()) {
                table.show(project, request.entries());
            }
            changed.run();
        }
    }

    private void change() {
        if (!showing) {
            request = new StackRequest(request.entries(), vessel.getText().strip(), rules.path());
            changed.run();
        }
    }

    private void select(int index) {
        table.select(index);
        showSelected();
    }

    /** Shows a stack with the devices and rule sets of a project. */
    void show(ProjectDevices newProject, StackRequest shown) {
        showing = true;
        if (!newProject.equals(project)) {
            project = newProject;
            add.offer(project.catalogue());
            wire.offer(project.catalogue());
        }
        request = shown;
        table.show(project, request.entries());
        if (!vessel.getText().strip().equals(request.vessel())) {
            vessel.setText(request.vessel());
        }
        rules.show(project, request.rules());
        showing = false;
        showSelected();
    }

    private void showSelected() {
        showing = true;
        int index = table.selected();
        Optional<StackEntry> entry = index < 0 ? Optional.empty() : Optional.of(request.entries().get(index));
        if (!ahead.getText().strip().equals(entry.map(StackEntry::ahead).orElse(""))) {
            ahead.setText(entry.map(StackEntry::ahead).orElse(""));
        }
        wire.show(entry.map(StackEntry::wire).orElse(""));
        used.setSelection(entry.map(StackEntry::used).orElse(false));
        beside.setSelection(entry.map(StackEntry::beside).orElse(false));
        boolean inner = index > 0;
        List.of(wire.control(), used).forEach(control -> control.setEnabled(entry.isPresent()));
        ahead.setEnabled(inner);
        beside.setEnabled(inner && index + 1 < request.entries().size());
        up.setEnabled(inner);
        down.setEnabled(index >= 0 && index + 1 < request.entries().size());
        remove.setEnabled(index >= 0);
        showing = false;
    }

    /** Shows what came out, or nothing. */
    void show(Optional<AnsweredStack> answered) {
        table.show(answered);
    }

    /** Returns the stack as it is filled in. */
    StackRequest request() {
        return request;
    }

    /** Says that words for a wire name none; nothing while that is not so. */
    Optional<String> problem() {
        return wire.problem();
    }

    /** Returns which device is selected; -1 for none. */
    int selected() {
        return table.selected();
    }

    /** Selects a device. */
    void choose(int index) {
        select(index);
    }

    boolean setFocus() {
        return request.entries().isEmpty() ? add.control().setFocus() : table.control().setFocus();
    }
}
