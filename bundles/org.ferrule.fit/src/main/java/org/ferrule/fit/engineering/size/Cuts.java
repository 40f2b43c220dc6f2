/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.size;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.engineering.change.DeviceChange;
import org.ferrule.fit.engineering.change.Place;
import org.ferrule.fit.engineering.change.Replacement;
import org.ferrule.fit.engineering.change.Reprint;
import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.figure.FigureReader;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.Occupant;
import org.ferrule.fit.passage.OwnWire;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.rules.FigureClass;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;

/** Puts the tolerances that a budget asks for into a question: each contributor gives its share. */
final class Cuts {
    private final FitQuestion question;
    private final FigureReader reader;

    private Cuts(FitQuestion question) {
        this.question = question;
        this.reader = new FigureReader(question.rules());
    }

    /** The question with narrower tolerances; the wires' first, while the devices are still those that were asked of. */
    static FitQuestion in(FitQuestion question, List<Contributor> contributors) {
        Cuts cuts = new Cuts(question);
        FitQuestion cut = question;
        Map<Device, List<Contributor>> papers = new LinkedHashMap<>();
        for (Contributor contributor : contributors) {
            if (contributor.place() instanceof Place.Wire wire) {
                cut = cuts.cut(cut, wire, contributor.shared());
            } else {
                papers.computeIfAbsent(contributor.place().device(), d -> new ArrayList<>()).add(contributor);
            }
        }
        for (Map.Entry<Device, List<Contributor>> each : papers.entrySet()) {
            cut = Replacement.of(each.getKey(), cuts.changed(each.getKey(), each.getValue()), question.rules())
                    .in(cut);
        }
        return cut;
    }

    private FitQuestion cut(FitQuestion asked, Place.Wire wire, Length by) {
        FitQuestion cut = asked;
        List<ReadDevice> devices = new ArrayList<>(List.of(question.inner()));
        question.conditions().inside().stream().map(Occupant::device).forEach(devices::add);
        for (ReadDevice read : devices) {
            if (read.device().equals(wire.device()) && read.wire().diameter().isPresent()) {
                cut = Replacement.ofWire(List.of(read), narrower(read.wire(), by), question.rules()).in(cut);
            }
        }
        return cut;
    }

    private static OwnWire narrower(OwnWire wire, Length by) {
        Figure figure = wire.diameter().orElseThrow();
        Figure cut = new Figure(figure.low(), figure.centre(), figure.high().minus(by).max(figure.centre()),
                figure.centreAssumed());
        return new OwnWire(Optional.of(cut), wire.label(), wire.device());
    }

    private Device changed(Device device, List<Contributor> contributors) {
        Device changed = device;
        for (Contributor contributor : contributors) {
            changed = contributor.place() instanceof Place.Bore bore
                    ? wider(new Place.Bore(changed, changed.lumen(bore.lumen().name()), bore.index()),
                            contributor.shared())
                    : thinner(new Place.Shaft(changed, ((Place.Shaft) contributor.place()).index()),
                            contributor.shared());
        }
        return changed;
    }

    private Device wider(Place.Bore bore, Length by) {
        DeviceKind kind = bore.device().kind();
        return DeviceChange.of(bore,
                printed -> printed.map(d -> narrower(d, FigureClass.INNER_DIAMETER, kind, by, Length.ZERO)));
    }

    private Device thinner(Place.Shaft shaft, Length by) {
        DeviceKind kind = shaft.device().kind();
        return DeviceChange.of(shaft, contour -> DeviceChange.eachFigure(contour,
                d -> narrower(d, shaft.figureClass(), kind, Length.ZERO, by)));
    }

    private Dimension narrower(Dimension printed, FigureClass figures, DeviceKind kind, Length below, Length above) {
        Figure figure = reader.read(printed, figures, kind).figure();
        return Reprint.within(figure.low().plus(below).min(figure.centre()), figure.centre(),
                figure.high().minus(above).max(figure.centre()));
    }
}
