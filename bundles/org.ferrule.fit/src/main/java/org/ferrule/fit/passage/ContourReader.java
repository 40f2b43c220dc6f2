/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.ferrule.fit.device.Contour;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.ShaftSection;
import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.figure.FigureReader;
import org.ferrule.fit.figure.ReadFigure;
import org.ferrule.fit.rules.FigureClass;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.quantity.Dimension;

/** Reads the room that one section of a shaft needs, alone or with a wire beside it. */
final class ContourReader {
    private final Device device;
    private final FigureReader reader;

    ContourReader(Device device, FigureReader reader) {
        this.device = device;
        this.reader = reader;
    }

    /**
     * Reads a section.
     *
     * @param distal its outline at its distal end
     * @param proximal its outline at its proximal end
     * @param wire the wire beside it, if one lies there
     */
    Stretch read(ShaftSection section, Contour distal, Contour proximal, Optional<Figure> wire) {
        Optional<Reason> why = whyUnknown(section, distal).or(() -> whyUnknown(section, proximal));
        if (why.isPresent()) {
            return Stretch.unknown(section.name(), section.from(), section.to(), why.get(), section.source());
        }
        List<ReadFigure> used = new ArrayList<>();
        Room start = room(section, distal, wire, used);
        Room end = distal.equals(proximal) ? start : room(section, proximal, wire, used);
        List<Reason> notes = Assumptions.of(device, section.name(), used);
        return new Stretch(section.name(), section.from(), section.to(),
                Optional.of(new Taper(start.needed(), end.needed())), start.proved() && end.proved(), notes,
                section.source());
    }

    private Optional<Reason> whyUnknown(ShaftSection section, Contour contour) {
        for (Optional<Dimension> printed : dimensions(contour)) {
            Optional<Reason> why = MissingFigures.firstOf(device, classOf(section), section.name(), printed);
            if (why.isPresent()) {
                return why;
            }
        }
        return Optional.empty();
    }

    private static List<Optional<Dimension>> dimensions(Contour contour) {
        if (contour instanceof Contour.Round round) {
            return List.of(round.diameter());
        }
        if (contour instanceof Contour.Oval oval) {
            return List.of(Optional.of(oval.width()), Optional.of(oval.height()));
        }
        return ((Contour.Bundle) contour).members().stream().map(m -> Optional.of(m.diameter())).toList();
    }

    private Room room(ShaftSection section, Contour contour, Optional<Figure> wire, List<ReadFigure> used) {
        List<Figure> figures = new ArrayList<>();
        for (Optional<Dimension> printed : dimensions(contour)) {
            ReadFigure figure = reader.read(printed.orElseThrow(), classOf(section), device.kind());
            used.add(figure);
            figures.add(figure.figure());
        }
        return Room.of(contour, figures, wire);
    }

    private FigureClass classOf(ShaftSection section) {
        return section.crossingProfile() ? FigureClass.CROSSING_PROFILE : OutlineReader.figureOf(device);
    }
}
