/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.passage;

import java.util.List;
import java.util.function.Consumer;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.passage.Direction;

/** Where the daily question is filled in: what is in place, outermost first, then what is to be passed. */
final class PassageForm {

    private static final String USUAL = "the usual one";

    private final Composite control;
    private final Consumer<PassageQuestion> listener;
    private final DeviceField outer;
    private final Combo lumen;
    private final DeviceField wire;
    private final DeviceField inner;
    private final Combo direction;
    private final Text reach;
    private final Combo rules;
    private final ConditionForm conditions;
    private boolean showing;

    /**
     * Creates the form.
     *
     * @param listener hears of every question that is filled in
     * @param resized hears when it takes more or less room than before
     */
    PassageForm(Composite parent, Consumer<PassageQuestion> listener, Runnable resized) {
        this.listener = listener;
        control = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(6, 4).spacing(8, 4).applyTo(control);
        outer = new DeviceField(control, "In place", device -> !device.lumens().isEmpty(), this::outerChosen);
        lumen = combo("Lumen");
        wire = new DeviceField(control, "Over wire", device -> device.kind() == DeviceKind.GUIDEWIRE, this::changed);
        inner = new DeviceField(control, "To pass", device -> true, this::changed);
        direction = combo("Enters");
        for (Direction each : Direction.values()) {
            direction.add(each.word());
        }
        reach = text("Reach", "hub to hub, or such as 86 mm");
        rules = combo("Rules");
        conditions = new ConditionForm(control, this::changed, resized);
    }

    private Combo combo(String label) {
        new Label(control, SWT.NONE).setText(label);
        Combo combo = new Combo(control, SWT.DROP_DOWN | SWT.READ_ONLY);
        GridDataFactory.fillDefaults().grab(true, false).hint(80, SWT.DEFAULT).applyTo(combo);
        combo.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> changed()));
        return combo;
    }

    private Text text(String label, String message) {
        new Label(control, SWT.NONE).setText(label);
        Text text = new Text(control, SWT.BORDER);
        text.setMessage(message);
        text.setToolTipText("How far the device has to come beyond the tip of what is in place; over a wire's tail, "
                + "how much wire has to stay ahead");
        GridDataFactory.fillDefaults().grab(true, false).applyTo(text);
        text.addModifyListener(event -> changed());
        return text;
    }

    Control control() {
        return control;
    }

    private void outerChosen() {
        fillLumens("");
        changed();
    }

    private void fillLumens(String chosen) {
        List<String> names = outer.device().map(found -> found.device()).map(Device::lumens).orElse(List.of()).stream()
                .map(Lumen::name).toList();
        lumen.removeAll();
        lumen.add(USUAL);
        names.forEach(lumen::add);
        lumen.select(Math.max(0, 1 + names.indexOf(chosen)));
        lumen.setEnabled(names.size() > 1);
    }

    private void changed() {
        if (!showing) {
            conditions.showHeading();
            listener.accept(question());
        }
    }

    /** Offers the devices and rule sets of a project. */
    void offer(ProjectDevices devices) {
        showing = true;
        PassageQuestion kept = question();
        outer.offer(devices.catalogue());
        wire.offer(devices.catalogue());
        inner.offer(devices.catalogue());
        conditions.offer(devices.catalogue());
        rules.setItems(devices.rules().keySet().toArray(String[]::new));
        show(kept);
    }

    /** Shows a question. */
    void show(PassageQuestion question) {
        showing = true;
        outer.show(question.outer());
        fillLumens(question.lumen());
        wire.show(question.wire());
        inner.show(question.inner());
        direction.select(question.direction().ordinal());
        reach.setText(question.reach());
        conditions.show(question.conditions());
        rules.select(rules.indexOf(question.rules()));
        if (rules.getSelectionIndex() < 0 && rules.getItemCount() == 1) {
            rules.select(0);
        }
        showing = false;
    }

    /** Returns the question as it is filled in. */
    PassageQuestion question() {
        String chosen = lumen.getSelectionIndex() > 0 ? lumen.getText() : "";
        return new PassageQuestion(outer.reference(), chosen, wire.reference(), inner.reference(),
                Direction.values()[Math.max(0, direction.getSelectionIndex())], reach.getText().trim(),
                rules.getText(), conditions.conditions());
    }

    boolean setFocus() {
        return outer.control().setFocus();
    }
}
