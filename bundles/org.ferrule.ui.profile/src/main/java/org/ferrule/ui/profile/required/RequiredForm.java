/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.profile.required;

import java.util.List;
import java.util.stream.Collectors;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.engineering.change.Place;
import org.ferrule.quantity.Dimension;
import org.ferrule.ui.fit.passage.ProjectDevices;
import org.ferrule.ui.profile.compare.DeviceChoice;

/** The device, its section, its partners, the way and the rules. */
final class RequiredForm {

    private static final int MOST_PARTNERS = 60;

    private final Runnable changed;
    private final DeviceChoice device;
    private final Combo section;
    private final Combo phase;
    private final Combo rules;
    private final DeviceChoice partners;
    private List<String> paths = List.of();
    private boolean showing;

    /** Creates an empty form; something is run when something else is asked. */
    RequiredForm(Composite parent, Runnable changed) {
        this.changed = changed;
        device = new DeviceChoice(parent, "Device", any -> true, number -> "", 1, this::changed);
        Composite pairs = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(8, 4).applyTo(pairs);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(pairs);
        section = combo(pairs, "Section", "The section whose diameter is moved: of the shaft, or of a lumen");
        phase = combo(pairs, "Way", "Going in, or coming out with the profiles after use");
        phase.setItems("going in", "coming out");
        rules = combo(pairs, "Rules", "By which labels become intervals");
        partners = new DeviceChoice(parent, "Partners", any -> true, number -> "", MOST_PARTNERS, this::changed);
    }

    private Combo combo(Composite parent, String label, String tooltip) {
        new Label(parent, SWT.NONE).setText(label);
        Combo combo = new Combo(parent, SWT.READ_ONLY | SWT.DROP_DOWN);
        combo.setToolTipText(tooltip);
        GridDataFactory.fillDefaults().grab(true, false).hint(100, SWT.DEFAULT).applyTo(combo);
        combo.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> changed()));
        return combo;
    }

    private void changed() {
        if (!showing) {
            changed.run();
        }
    }

    /** Shows a request with the devices and rule sets of a project. */
    void show(ProjectDevices project, RequiredRequest request) {
        showing = true;
        device.show(project, request.devices());
        partners.show(project, request.partners());
        List<String> names = RequiredAnswer.device(project, request)
                .map(found -> RequiredAnswer.places(found.device()).stream().map(RequiredForm::name).toList())
                .orElse(List.of());
        if (!names.equals(List.of(section.getItems()))) {
            section.setItems(names.toArray(String[]::new));
        }
        section.select(Math.min(Math.max(0, request.section()), names.size() - 1));
        phase.select(request.phase() == Phase.IN ? 0 : 1);
        paths = List.copyOf(project.rules().keySet());
        rules.setItems(project.rules().entrySet().stream()
                .map(set -> set.getValue().title().isEmpty() ? set.getKey() : set.getValue().title())
                .toArray(String[]::new));
        rules.select(Math.max(0, paths.indexOf(request.rules())));
        showing = false;
    }

    private static String name(Place place) {
        String kind = place instanceof Place.Bore ? "lumen " : "shaft ";
        String printed = place.printed().stream().map(Dimension::text).distinct()
                .collect(Collectors.joining(" \u2013 "));
        return kind + place.name() + ": " + (printed.isEmpty() ? "not stated" : printed);
    }

    /** Returns what is filled in. */
    RequiredRequest request() {
        int rule = rules.getSelectionIndex();
        return new RequiredRequest(device.references(), Math.max(0, section.getSelectionIndex()),
                partners.references(), rule >= 0 && rule < paths.size() ? paths.get(rule) : "",
                phase.getSelectionIndex() == 1 ? Phase.OUT : Phase.IN);
    }
}
