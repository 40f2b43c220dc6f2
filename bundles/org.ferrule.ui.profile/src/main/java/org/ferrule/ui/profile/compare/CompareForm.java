/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.profile.compare;

import java.util.List;
import java.util.function.BiConsumer;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IMemento;
import org.ferrule.ui.look.DropDown;
import org.ferrule.profile.Landmark;
import org.ferrule.profile.ProfileComparison;
import org.ferrule.profile.words.ProfileWords;
import org.ferrule.ui.fit.passage.ProjectDevices;
import org.ferrule.ui.fit.passage.RulesChoice;
import org.ferrule.ui.look.Tick;

/** What is compared: devices, landmark, lumens, wire, rules, and what is drawn of it. */
final class CompareForm {

    private static final List<Landmark> LANDMARKS = List.of(Landmark.TIP, new Landmark(Landmark.Kind.MARKER, 1),
            new Landmark(Landmark.Kind.MARKER, 2), Landmark.of(Landmark.Kind.EXIT_PORT),
            Landmark.of(Landmark.Kind.LARGEST_PART), new Landmark(Landmark.Kind.RIGID_END, 1),
            new Landmark(Landmark.Kind.RIGID_END, 2));
    private static final int MOST_LUMENS = 6;
    private static final int LEAST_WIDTH = 100;
    private static final String BANDS = "bands";
    private static final String LUMENS = "lumens";

    private final Runnable changed;
    private final BiConsumer<Boolean, Boolean> drawn;
    private final DeviceChoice devices;
    private final DeviceChoice lumens;
    private final DropDown landmark;
    private final RulesChoice rules;
    private final Text wire;
    private final Button bands;
    private final Button inner;
    private boolean showing;

    /**
     * Creates an empty form.
     *
     * @param changed is run when something else is to be compared
     * @param drawn is told whether bands and whether lumens are drawn
     */
    CompareForm(Composite parent, Runnable changed, BiConsumer<Boolean, Boolean> drawn) {
        this.changed = changed;
        this.drawn = drawn;
        devices = new DeviceChoice(parent, "Devices", any -> true, ProfileWords::letter, ProfileComparison.MOST,
                this::changed);
        Composite pairs = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(8, 4).applyTo(pairs);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(pairs);
        landmark = list(pairs, "From", "Where stations count from");
        landmark.show(LANDMARKS.stream().map(ComparePlot.words()::landmark).toList(), 0);
        wire = text(pairs);
        new Label(pairs, SWT.NONE).setText("Rules");
        rules = new RulesChoice(pairs, this::changed);
        lumens = new DeviceChoice(parent, "Through", device -> device.mainLumen().isPresent(),
                ProfileWords::lineSign, MOST_LUMENS, this::changed);
        bands = check(parent, "Tolerance bands");
        inner = check(parent, "Lumens of the devices");
        for (Button button : List.of(bands, inner)) {
            button.addSelectionListener(SelectionListener
                    .widgetSelectedAdapter(event -> drawn.accept(bands.getSelection(), inner.getSelection())));
        }
    }

    private DropDown list(Composite parent, String label, String tooltip) {
        new Label(parent, SWT.NONE).setText(label);
        return new DropDown(parent, LEAST_WIDTH).explained(tooltip).onChoice(this::changed);
    }

    private Text text(Composite parent) {
        new Label(parent, SWT.NONE).setText("Wire");
        Text text = new Text(parent, SWT.BORDER);
        text.setMessage("none, or such as 0.014 in");
        text.setToolTipText("The diameter of a wire: the table tells what it leaves of each lumen");
        GridDataFactory.fillDefaults().grab(true, false).hint(LEAST_WIDTH, SWT.DEFAULT).applyTo(text);
        text.addModifyListener(event -> changed());
        return text;
    }

    private static Button check(Composite parent, String text) {
        Button button = Tick.box(parent, text);
        button.setSelection(true);
        return button;
    }

    private void changed() {
        if (!showing) {
            changed.run();
        }
    }

    /** Shows a request with the devices and rule sets of a project. */
    void show(ProjectDevices project, CompareRequest request) {
        showing = true;
        devices.show(project, request.devices());
        lumens.show(project, request.lumens());
        landmark.choose(Math.max(0, LANDMARKS.indexOf(request.landmark())));
        if (!wire.getText().equals(request.wire())) {
            wire.setText(request.wire());
        }
        rules.showOrFirst(project, request.rules());
        showing = false;
    }

    /** Keeps what is drawn for the next start. */
    void saveDrawing(IMemento memento) {
        memento.putBoolean(BANDS, bands.getSelection());
        memento.putBoolean(LUMENS, inner.getSelection());
    }

    /** Draws what was drawn before; bands and lumens where nothing is kept. */
    void restoreDrawing(IMemento memento) {
        bands.setSelection(!Boolean.FALSE.equals(memento.getBoolean(BANDS)));
        inner.setSelection(!Boolean.FALSE.equals(memento.getBoolean(LUMENS)));
        drawn.accept(bands.getSelection(), inner.getSelection());
    }

    /** Returns what is filled in. */
    CompareRequest request() {
        return new CompareRequest(devices.references(), LANDMARKS.get(Math.max(0, landmark.chosen())),
                lumens.references(), wire.getText().strip(), rules.path());
    }
}
