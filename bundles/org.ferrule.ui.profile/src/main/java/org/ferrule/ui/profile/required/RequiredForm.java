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
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.ferrule.ui.look.DropDown;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.engineering.change.Place;
import org.ferrule.quantity.Dimension;
import org.ferrule.ui.fit.passage.ProjectDevices;
import org.ferrule.ui.fit.passage.RulesChoice;
import org.ferrule.ui.profile.compare.DeviceChoice;

/** The device, its section, its partners, the way and the rules. */
final class RequiredForm {

    private static final int MOST_PARTNERS = 60;
    private static final int LEAST_WIDTH = 100;

    private final Runnable changed;
    private final DeviceChoice device;
    private final DropDown section;
    private final DropDown phase;
    private final RulesChoice rules;
    private final DeviceChoice partners;
    private boolean showing;

    /** Creates an empty form; something is run when something else is asked. */
    RequiredForm(Composite parent, Runnable changed) {
        this.changed = changed;
        device = new DeviceChoice(parent, "Device", any -> true, number -> "", 1, this::changed);
        Composite pairs = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(8, 4).applyTo(pairs);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(pairs);
        section = list(pairs, "Section", "The section whose diameter is moved: of the shaft, or of a lumen");
        phase = list(pairs, "Way", "Going in, or coming out with the profiles after use");
        phase.show(List.of("going in", "coming out"), 0);
        new Label(pairs, SWT.NONE).setText("Rules");
        rules = new RulesChoice(pairs, this::changed);
        partners = new DeviceChoice(parent, "Partners", any -> true, number -> "", MOST_PARTNERS, this::changed);
    }

    private DropDown list(Composite parent, String label, String tooltip) {
        new Label(parent, SWT.NONE).setText(label);
        return new DropDown(parent, LEAST_WIDTH).explained(tooltip).onChoice(this::changed);
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
        section.show(names, Math.min(Math.max(0, request.section()), names.size() - 1));
        phase.choose(request.phase() == Phase.IN ? 0 : 1);
        rules.showOrFirst(project, request.rules());
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
        return new RequiredRequest(device.references(), Math.max(0, section.chosen()),
                partners.references(), rules.path(),
                phase.chosen() == 1 ? Phase.OUT : Phase.IN);
    }
}
