/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.engine.catalogue.ReferenceException;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.figure.FigureReader;
import org.ferrule.fit.passage.Bend;
import org.ferrule.fit.passage.Conditions;
import org.ferrule.fit.passage.Occupant;
import org.ferrule.fit.passage.OwnWire;
import org.ferrule.fit.passage.Through;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.model.FitChart;
import org.ferrule.model.ThroughExtension;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.Offset;

/**
 * Reads what else holds while a chart's devices pass. A condition that cannot be asked as it is written is a problem,
 * and a device of which nothing is known takes its place.
 */
final class ConditionReader {
    private static final String INSIDE = "inside";
    private static final String THROUGH = "through";
    private final Catalogue catalogue;
    private final RuleSet rules;
    private final ReadDevices devices;
    private final UnknownDevices unknown;
    private final List<ChartProblem> problems;
    private final List<Occupant> inside = new ArrayList<>();

    ConditionReader(Catalogue catalogue, RuleSet rules, ReadDevices devices, UnknownDevices unknown,
            List<ChartProblem> problems) {
        this.catalogue = catalogue;
        this.rules = rules;
        this.devices = devices;
        this.unknown = unknown;
        this.problems = problems;
    }

    /**
     * The conditions of a chart.
     *
     * @param reach how far beyond the outer tip its devices come; absent when it asks hub to hub
     */
    Conditions read(FitChart chart, Optional<Length> reach) {
        List<Bend> bends = new ArrayList<>();
        BendReader bendReader = new BendReader(problems, bends);
        if (chart.getPath() != null) {
            bendReader.addPath(chart.getPath(), reach);
        }
        if (chart.getConditions() == null) {
            return new Conditions(inside, Optional.empty(), bends, false);
        }
        chart.getConditions().getInside().forEach(this::addOccupant);
        Optional<Through> through = Optional.ofNullable(chart.getConditions().getThrough()).flatMap(this::through);
        chart.getConditions().getBends().forEach(bend -> bendReader.add(bend, () -> addUnknown("a bend of the lumen")));
        return new Conditions(inside, through, bends, chart.getConditions().isAfterInflation());
    }

    private void addOccupant(org.ferrule.model.Occupant occupant) {
        String reference = occupant.getDevice() == null ? "a device inside" : occupant.getDevice();
        Optional<Device> device = occupant.getDevice() == null ? unnamed(INSIDE, reference) : device(INSIDE, reference);
        Optional<Length> ahead = position(INSIDE, occupant.getTipAhead(), "the place of \"" + reference + "\"");
        if (device.isEmpty() || ahead.isEmpty()) {
            addUnknown(reference);
        } else {
            inside.add(new Occupant(devices.read(device.get(), wire(occupant.getWire())), ahead.get(),
                    occupant.isUsed()));
        }
    }

    /** A wire that is named and not found is not known, and must not be taken for the one that a device states. */
    private Optional<OwnWire> wire(String reference) {
        return reference == null ? Optional.empty() : Optional.of(device(INSIDE, reference)
                .map(w -> OwnWire.ofDevice(w, new FigureReader(rules))).orElse(OwnWire.NOT_STATED));
    }

    private Optional<Through> through(ThroughExtension through) {
        if (through.getExtension() == null) {
            addUnknown("a guide extension");
            return unnamed(THROUGH, "the guide extension");
        }
        LumenReference reference = LumenReference.parse(through.getExtension());
        Optional<Length> protrusion = position(THROUGH, through.getProtrusion(),
                "how far the guide extension protrudes");
        Optional<Through> found = device(THROUGH, reference.device()).flatMap(extension -> protrusion
                .flatMap(p -> through(reference, extension, p)));
        if (found.isEmpty()) {
            addUnknown(through.getExtension());
        }
        return found;
    }

    private Optional<Through> through(LumenReference reference, Device extension, Length protrusion) {
        try {
            return Optional.of(ExtensionPlace.of(devices.read(extension, Optional.empty()), reference, protrusion));
        } catch (ReferenceException e) {
            problems.add(new ChartProblem(THROUGH, e.getMessage()));
            return Optional.empty();
        }
    }

    private Optional<Device> device(String place, String reference) {
        try {
            return Optional.of(catalogue.device(reference).device());
        } catch (ReferenceException e) {
            problems.add(new ChartProblem(place, e.getMessage()));
            return Optional.empty();
        }
    }

    private <T> Optional<T> unnamed(String place, String what) {
        problems.add(new ChartProblem(place, what + " is not named"));
        return Optional.empty();
    }

    /** A place that is not stated is at the outer tip. */
    private Optional<Length> position(String place, Offset printed, String what) {
        if (printed == null) {
            return Optional.of(Length.ZERO);
        }
        if (!printed.readable()) {
            problems.add(new ChartProblem(place, what + " cannot be read: \"" + printed.text() + "\""));
            return Optional.empty();
        }
        return Optional.of(printed.value());
    }

    private void addUnknown(String words) {
        inside.add(new Occupant(devices.read(unknown.called(words), Optional.empty()), Length.ZERO, false));
    }
}
