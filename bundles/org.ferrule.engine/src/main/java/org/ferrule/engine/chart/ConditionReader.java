/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.engine.catalogue.ReferenceException;
import org.ferrule.engine.catalogue.UnknownDevices;
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
        List<org.ferrule.model.Occupant> occupants = chart.getConditions().getInside();
        IntStream.range(0, occupants.size()).forEach(i -> addOccupant(i, occupants.get(i)));
        Optional<Through> through = Optional.ofNullable(chart.getConditions().getThrough()).flatMap(this::through);
        List<org.ferrule.model.Bend> written = chart.getConditions().getBends();
        IntStream.range(0, written.size())
                .forEach(i -> bendReader.add(i, written.get(i), () -> addUnknown("a bend of the lumen")));
        return new Conditions(inside, through, bends, chart.getConditions().isAfterInflation());
    }

    private void addOccupant(int index, org.ferrule.model.Occupant occupant) {
        String reference = occupant.getDevice() == null ? "a device inside" : occupant.getDevice();
        Written written = new Written(INSIDE, index);
        Optional<Device> device = written.device("device", occupant.getDevice(), reference);
        Optional<Length> ahead = written.position("tipAhead", occupant.getTipAhead(),
                "the place of \"" + reference + "\"");
        if (device.isEmpty() || ahead.isEmpty()) {
            addUnknown(reference);
        } else {
            inside.add(new Occupant(devices.read(device.get(), wire(written, occupant.getWire())), ahead.get(),
                    occupant.isUsed()));
        }
    }

    /** A wire that is named and not found is not known, and must not be taken for the one that a device states. */
    private Optional<OwnWire> wire(Written written, String reference) {
        return reference == null ? Optional.empty() : Optional.of(written.device("wire", reference, reference)
                .map(w -> OwnWire.ofDevice(w, new FigureReader(rules))).orElse(OwnWire.NOT_STATED));
    }

    private Optional<Through> through(ThroughExtension through) {
        Written written = new Written(THROUGH, 0);
        String words = through.getExtension() == null ? "the guide extension" : through.getExtension();
        LumenReference reference = LumenReference.parse(words);
        Optional<Length> protrusion = written.position("protrusion", through.getProtrusion(),
                "how far the guide extension protrudes");
        Optional<Device> extension = written.device("extension",
                through.getExtension() == null ? null : reference.device(), words);
        Optional<Through> found = extension.flatMap(e -> protrusion.flatMap(p -> through(reference, e, p)));
        if (found.isEmpty()) {
            addUnknown(through.getExtension() == null ? "a guide extension" : words);
        }
        return found;
    }

    private Optional<Through> through(LumenReference reference, Device extension, Length protrusion) {
        try {
            return Optional.of(ExtensionPlace.of(devices.read(extension, Optional.empty()), reference, protrusion));
        } catch (ReferenceException e) {
            problems.add(new ChartProblem(THROUGH, 0, "extension", e.getMessage()));
            return Optional.empty();
        }
    }

    private void addUnknown(String words) {
        inside.add(new Occupant(devices.read(unknown.called(words), Optional.empty()), Length.ZERO, false));
    }

    /** A condition as it stands in the chart: what is wrong with it is told where it stands. */
    private final class Written {
        private final String place;
        private final int index;

        Written(String place, int index) {
            this.place = place;
            this.index = index;
        }

        Optional<Device> device(String key, String reference, String words) {
            if (reference == null) {
                return wrong(key, words + " is not named");
            }
            try {
                return Optional.of(catalogue.device(reference).device());
            } catch (ReferenceException e) {
                return wrong(key, e.getMessage());
            }
        }

        /** A place that is not stated is at the outer tip. */
        Optional<Length> position(String key, Offset printed, String what) {
            if (printed == null) {
                return Optional.of(Length.ZERO);
            }
            return printed.readable() ? Optional.of(printed.value())
                    : wrong(key, what + " cannot be read: \"" + printed.text() + "\"");
        }

        private <T> Optional<T> wrong(String key, String message) {
            problems.add(new ChartProblem(place, index, key, message));
            return Optional.empty();
        }
    }
}
