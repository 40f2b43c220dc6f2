/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.sensitivity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.engineering.change.DeviceChange;
import org.ferrule.fit.engineering.change.Place;
import org.ferrule.fit.engineering.change.Replacement;
import org.ferrule.fit.engineering.change.Reprint;
import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.figure.FigureReader;
import org.ferrule.fit.figure.ReadFigure;
import org.ferrule.fit.matrix.MatrixQuestion;
import org.ferrule.fit.passage.OwnWire;
import org.ferrule.fit.rules.FigureClass;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;

/**
 * What a place of the papers may turn out to be: a part that is known to lie at one end of its interval, at the other,
 * or at its centre; both ends of a taper, and all figures of an outline that is not round, together.
 *
 * @param ends the changes that tell whether the place matters
 * @param centre the change that measuring may bring; absent where the spread is not assumed
 */
record Variants(List<Replacement> ends, Optional<Replacement> centre) {
    private static final Variants NONE = new Variants(List.of(), Optional.empty());

    Variants {
        ends = List.copyOf(ends);
    }

    static Variants of(Place place, MatrixQuestion question) {
        RuleSet rules = question.rules();
        if (place instanceof Place.Statement statement) {
            Device without = DeviceChange.without(statement);
            return new Variants(List.of(Replacement.of(place.device(), without, rules)), Optional.empty());
        }
        if (place instanceof Place.Wire wire) {
            return ofWire(wire, question);
        }
        return place.isIncomplete() ? NONE : ofSection(place, rules);
    }

    private static Variants ofSection(Place place, RuleSet rules) {
        return changed(place, rules, changed -> Replacement.of(place.device(), changed, rules));
    }

    /** A section of the wire that all inner devices run over; what is printed of it, and claims go by, stays. */
    static Variants ofNamedWire(Place.Shaft place, MatrixQuestion question) {
        FigureReader reader = new FigureReader(question.rules());
        Optional<Length> label = OwnWire.ofDevice(place.device(), reader).label();
        return place.isIncomplete() ? NONE : changed(place, question.rules(), changed -> Replacement.ofWire(
                question.inner(),
                new OwnWire(OwnWire.ofDevice(changed, reader).diameter(), label, Optional.of(changed)),
                question.rules()));
    }

    private static Variants changed(Place place, RuleSet rules, Function<Device, Replacement> replacement) {
        FigureReader reader = new FigureReader(rules);
        FigureClass figures = place instanceof Place.Shaft shaft ? shaft.figureClass() : FigureClass.INNER_DIAMETER;
        Function<Dimension, ReadFigure> read = d -> reader.read(d, figures, place.device().kind());
        List<ReadFigure> all = place.printed().stream().map(read).toList();
        boolean spread = all.stream().anyMatch(r -> r.figure().low().compareTo(r.figure().high()) < 0);
        if (!spread) {
            return NONE;
        }
        Function<Function<Figure, Length>, Replacement> at = end -> replacement
                .apply(exactly(place, d -> Reprint.exactly(end.apply(read.apply(d).figure()))));
        boolean assumed = all.stream().anyMatch(r -> r.assumedFrom().isPresent());
        return new Variants(List.of(at.apply(Figure::low), at.apply(Figure::high)),
                assumed ? Optional.of(at.apply(Figure::centre)) : Optional.empty());
    }

    private static Device exactly(Place place, Function<Dimension, Dimension> change) {
        if (place instanceof Place.Shaft shaft) {
            return DeviceChange.of(shaft, contour -> DeviceChange.eachFigure(contour, change::apply));
        }
        return DeviceChange.of((Place.Bore) place, printed -> printed.map(change));
    }

    /** Only where the device runs over the wire that it is stated to take, and not over one that the question names. */
    private static Variants ofWire(Place.Wire place, MatrixQuestion question) {
        Device device = place.device();
        OwnWire stated = OwnWire.statedFor(device, new FigureReader(question.rules()));
        boolean used = question.inner().stream()
                .anyMatch(d -> d.device().equals(device) && d.wire().equals(stated));
        if (!used || stated.diameter().isEmpty()) {
            return NONE;
        }
        Figure figure = stated.diameter().get();
        List<Replacement> ends = new ArrayList<>();
        Stream.of(figure.low(), figure.high()).filter(end -> !figure.low().equals(figure.high()))
                .forEach(end -> ends.add(at(end, device, stated, question.rules())));
        boolean assumed = new FigureReader(question.rules())
                .read(device.takesWire().orElseThrow(), FigureClass.WIRE_DIAMETER, DeviceKind.GUIDEWIRE).assumedFrom()
                .isPresent();
        return new Variants(ends, assumed && !ends.isEmpty()
                ? Optional.of(at(figure.centre(), device, stated, question.rules()))
                : Optional.empty());
    }

    private static Replacement at(Length end, Device device, OwnWire stated, RuleSet rules) {
        return Replacement.ofWire(device,
                new OwnWire(Optional.of(Figure.exactly(end)), stated.label(), stated.device()), rules);
    }
}
