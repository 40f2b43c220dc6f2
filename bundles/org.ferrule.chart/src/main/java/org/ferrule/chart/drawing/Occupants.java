/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.ferrule.chart.drawing.Member.Part;
import org.ferrule.fit.device.Contour;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.device.ShaftSection;
import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.figure.FigureReader;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.Limiting;
import org.ferrule.fit.rules.FigureClass;
import org.ferrule.geometry.EnclosingCircle;
import org.ferrule.geometry.Enclosure;
import org.ferrule.geometry.PlacedDisc;
import org.ferrule.geometry.Stadium;
import org.ferrule.picture.Point;
import org.ferrule.quantity.Dimension;

/**
 * What lies in the lumen at the place that decides, placed as tightly as it can lie.
 *
 * @param members of the shaft, then the wire beside it if there is one
 * @param oval whether the members of the shaft are the ends of one oval shaft
 */
record Occupants(List<Member> members, boolean oval) {

    static Occupants of(FitQuestion question, Phase phase, Limiting limiting) {
        Optional<Contour> contour = contour(question, phase, limiting);
        Figure bare = bareFigure(question, phase, limiting).orElse(limiting.deviceDiameter());
        Optional<Figure> wire = bare.equals(limiting.deviceDiameter()) ? Optional.empty()
                : question.inner().wire().diameter();
        if (contour.isPresent() && contour.get() instanceof Contour.Oval oval) {
            return oval(question, limiting, oval, wire);
        }
        if (contour.isPresent() && contour.get() instanceof Contour.Bundle bundle) {
            return bundle(question, limiting, bundle, wire);
        }
        return new Occupants(round(bare, wire), false);
    }

    /** The shaft's own diameter at that station, without a wire beside it. */
    private static Optional<Figure> bareFigure(FitQuestion question, Phase phase, Limiting limiting) {
        double station = -limiting.deviceStation().mm();
        return Band.ofShaft(question.inner(), question.rules(), phase, 0).stream()
                .filter(b -> b.name().equals(limiting.deviceSection()) && b.from() <= station && b.to() >= station)
                .flatMap(b -> b.figureAt(station).stream()).findFirst();
    }

    private static Optional<Contour> contour(FitQuestion question, Phase phase, Limiting limiting) {
        return section(question, limiting).map(s -> phase == Phase.OUT ? s.distalAfter() : s.distal());
    }

    private static Optional<ShaftSection> section(FitQuestion question, Limiting limiting) {
        return question.inner().device().sections().stream()
                .filter(s -> s.name().equals(limiting.deviceSection())
                        && s.from().compareTo(limiting.deviceStation()) <= 0
                        && s.to().compareTo(limiting.deviceStation()) >= 0)
                .findFirst();
    }

    private static List<Member> round(Figure shaft, Optional<Figure> wire) {
        if (wire.isEmpty()) {
            return List.of(new Member(Part.SHAFT, shaft, new Point(0, 0)));
        }
        Enclosure around = EnclosingCircle.discs(shaft.centre(), wire.get().centre());
        return List.of(upright(Part.SHAFT, shaft, around.discs().get(0)),
                upright(Part.WIRE, wire.get(), around.discs().get(1)));
    }

    /** Two discs lie beside each other; turned by a quarter, the shaft lies below the wire. */
    private static Member upright(Part part, Figure figure, PlacedDisc disc) {
        return new Member(part, figure, new Point(0, -disc.xMm()));
    }

    private static Occupants oval(FitQuestion question, Limiting limiting, Contour.Oval oval,
            Optional<Figure> wire) {
        Figure width = read(question, limiting, oval.width());
        Figure height = read(question, limiting, oval.height());
        Stadium stadium = new Stadium(width.centre(), height.centre());
        Enclosure around = wire.map(w -> stadium.with(w.centre())).orElseGet(stadium::enclosure);
        List<Member> members = new ArrayList<>();
        members.add(placed(Part.SHAFT, height, around.discs().get(0)));
        members.add(placed(Part.SHAFT, height, around.discs().get(1)));
        wire.ifPresent(w -> members.add(placed(Part.WIRE, w, around.discs().get(2))));
        return new Occupants(List.copyOf(members), true);
    }

    private static Member placed(Part part, Figure figure, PlacedDisc disc) {
        return new Member(part, figure, new Point(disc.xMm(), -disc.yMm()));
    }

    /** Members that keep their places; a wire beside them is drawn on top of all of them. */
    private static Occupants bundle(FitQuestion question, Limiting limiting, Contour.Bundle bundle,
            Optional<Figure> wire) {
        List<Member> members = new ArrayList<>();
        bundle.members().forEach(m -> members.add(new Member(Part.SHAFT, read(question, limiting, m.diameter()),
                new Point(m.x().mm(), -m.y().mm()))));
        double top = members.stream().mapToDouble(m -> m.centre().yMm() - m.radius()).min().orElse(0);
        wire.ifPresent(w -> members.add(new Member(Part.WIRE, w, new Point(0, top - w.centre().mm() / 2))));
        return new Occupants(List.copyOf(members), false);
    }

    private static Figure read(FitQuestion question, Limiting limiting, Dimension printed) {
        DeviceKind kind = question.inner().device().kind();
        boolean profile = section(question, limiting).map(ShaftSection::crossingProfile).orElse(false);
        FigureClass usual = kind == DeviceKind.GUIDEWIRE ? FigureClass.WIRE_DIAMETER : FigureClass.OUTER_DIAMETER;
        return new FigureReader(question.rules())
                .read(printed, profile ? FigureClass.CROSSING_PROFILE : usual, kind).figure();
    }
}
