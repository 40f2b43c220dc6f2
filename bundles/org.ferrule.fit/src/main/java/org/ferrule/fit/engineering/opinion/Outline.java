/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.opinion;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;

import org.ferrule.fit.device.Contour;
import org.ferrule.fit.device.ShaftSection;
import org.ferrule.fit.engineering.change.Place;
import org.ferrule.fit.rules.FigureClass;
import org.ferrule.geometry.DiscSet;
import org.ferrule.geometry.Stadium;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;

/** The diameter that one end of a section needs, alone or with a wire beside it, of the values that were drawn. */
final class Outline {
    private static final long LEAST = 1;

    private final Contour contour;
    private final List<ToDoubleFunction<double[]>> figures = new ArrayList<>();
    private final ToDoubleFunction<double[]> alone;
    private final ToDoubleFunction<double[]> core;

    Outline(ShaftSection section, Contour contour, Parts parts) {
        this.contour = contour;
        String where = parts.device().id() + " " + section.name();
        FigureClass figureClass = new Place.Shaft(parts.device(), parts.device().sections().indexOf(section))
                .figureClass();
        Optional<ToDoubleFunction<double[]>> growth = parts.growth(section);
        printed(contour).forEach(printed -> {
            ToDoubleFunction<double[]> one = parts.draws().printed(Parts.known(printed, where), Draw.Of.SHAFT,
                    where, figureClass, parts.device().kind());
            figures.add(growth.<ToDoubleFunction<double[]>>map(
                    g -> drawn -> one.applyAsDouble(drawn) * g.applyAsDouble(drawn)).orElse(one));
        });
        boolean round = contour instanceof Contour.Round;
        this.alone = round ? figures.get(0) : drawn -> enclosing(drawn, Optional.empty());
        this.core = round ? alone : this::within;
    }

    private static List<Optional<Dimension>> printed(Contour contour) {
        if (contour instanceof Contour.Round round) {
            return List.of(round.diameter());
        }
        if (contour instanceof Contour.Oval oval) {
            return List.of(Optional.of(oval.width()), Optional.of(oval.height()));
        }
        return ((Contour.Bundle) contour).members().stream().map(m -> Optional.of(m.diameter())).toList();
    }

    /** The outline alone. */
    ToDoubleFunction<double[]> alone() {
        return alone;
    }

    /** A disc that lies within the outline. */
    ToDoubleFunction<double[]> core() {
        return core;
    }

    private double within(double[] drawn) {
        DoubleStream diameters = figures.stream().mapToDouble(f -> f.applyAsDouble(drawn));
        return (contour instanceof Contour.Oval ? diameters.min() : diameters.max()).orElseThrow();
    }

    /** The outline and a wire beside it. */
    ToDoubleFunction<double[]> with(ToDoubleFunction<double[]> wire) {
        return contour instanceof Contour.Round
                ? drawn -> figures.get(0).applyAsDouble(drawn) + wire.applyAsDouble(drawn)
                : drawn -> enclosing(drawn, Optional.of(length(wire.applyAsDouble(drawn))));
    }

    private double enclosing(double[] drawn, Optional<Length> wire) {
        List<Length> lengths = figures.stream().map(f -> length(f.applyAsDouble(drawn))).toList();
        if (contour instanceof Contour.Oval) {
            Stadium stadium = new Stadium(lengths.get(0).max(lengths.get(1)), lengths.get(0).min(lengths.get(1)));
            return wire.map(stadium::with).orElseGet(stadium::enclosure).upperDiameter().thirdNanometres();
        }
        List<DiscSet.Disc> discs = new ArrayList<>();
        List<Contour.Member> members = ((Contour.Bundle) contour).members();
        for (int i = 0; i < members.size(); i++) {
            discs.add(new DiscSet.Disc(members.get(i).x(), members.get(i).y(), lengths.get(i)));
        }
        DiscSet set = new DiscSet(discs);
        return wire.map(set::with).orElseGet(set::enclosure).upperDiameter().thirdNanometres();
    }

    private static Length length(double thirdNanometres) {
        return new Length(Math.max(LEAST, Math.round(thirdNanometres)));
    }
}
