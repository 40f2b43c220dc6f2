/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.passage;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.ferrule.ui.look.DropDown;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.passage.Direction;

/** Where the daily question is filled in: what is in place, outermost first, then what is to be passed. */
final class PassageForm {

    static final int LEAST_WIDTH = 80;
    private static final String USUAL = "the usual one";

    private final Composite control;
    private final Consumer<PassageQuestion> listener;
    private final DeviceField outer;
    private final DropDown lumen;
    private final DeviceField wire;
    private final DeviceField inner;
    private final DropDown direction;
    private final Text reach;
    private final RulesChoice rules;
    private final ConditionForm conditions;
    private ProjectDevices project = ProjectDevices.NONE;
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
        lumen = list("Lumen");
        wire = new DeviceField(control, "Over wire", device -> device.kind() == DeviceKind.GUIDEWIRE, this::changed);
        inner = new DeviceField(control, "To pass", device -> true, this::changed);
        direction = list("Enters");
        direction.show(Stream.of(Direction.values()).map(Direction::word).toList(), 0);
        reach = text("Reach", "hub to hub, or such as 86 mm");
        new Label(control, SWT.NONE).setText("Rules");
        rules = new RulesChoice(control, this::changed);
        conditions = new ConditionForm(control, this::changed, resized);
    }

    private DropDown list(String label) {
        new Label(control, SWT.NONE).setText(label);
        return new DropDown(control, LEAST_WIDTH).onChoice(this::changed);
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
        lumen.show(Stream.concat(Stream.of(USUAL), names.stream()).toList(), 1 + names.indexOf(chosen));
        lumen.control().setEnabled(names.size() > 1);
    }

    private void changed() {
        if (!showing) {
            conditions.showHeading();
            listener.accept(question());
        }
    }

    /** Offers the devices and rule sets of a project; what is filled in stays. */
    void offer(ProjectDevices devices) {
        showing = true;
        PassageQuestion kept = question();
        outer.offer(devices.catalogue());
        wire.offer(devices.catalogue());
        inner.offer(devices.catalogue());
        conditions.offer(devices.catalogue());
        project = devices;
        fillLumens(kept.lumen());
        rules.show(project, kept.rules());
        showing = false;
    }

    /** Shows a question. */
    void show(PassageQuestion question) {
        showing = true;
        outer.show(question.outer());
        fillLumens(question.lumen());
        wire.show(question.wire());
        inner.show(question.inner());
        direction.choose(question.direction().ordinal());
        reach.setText(question.reach());
        conditions.show(question.conditions());
        rules.show(project, question.rules());
        showing = false;
    }

    /** Returns the question as it is filled in. */
    PassageQuestion question() {
        String chosen = lumen.chosen() > 0 ? lumen.text() : "";
        return new PassageQuestion(outer.reference(), chosen, wire.reference(), inner.reference(),
                Direction.values()[Math.max(0, direction.chosen())], reach.getText().trim(),
                rules.path(), conditions.conditions());
    }

    /** Returns what is wrong with the first field of which no device was chosen; nothing if that is none. */
    Optional<String> problem() {
        return Stream.concat(Stream.of(outer, wire, inner), conditions.devices()).map(DeviceField::problem)
                .flatMap(Optional::stream).findFirst();
    }

    boolean setFocus() {
        return outer.control().setFocus();
    }
}
