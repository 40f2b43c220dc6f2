/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.opinion;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

import org.ferrule.fit.device.Phase;
import org.ferrule.fit.device.ShaftSection;
import org.ferrule.fit.passage.Bend;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.Occupant;
import org.ferrule.fit.passage.Through;
import org.ferrule.quantity.Length;

/**
 * The rigid parts of a device pushed round the bends of the lumen, as cylinders in a torus. A part surely passes where a
 * cylinder as thick as its thickest place finds room in the narrowest lumen less the circle round all that lies there;
 * it surely stops where a cylinder within one of its sections finds none in the widest lumen, alone.
 */
final class BendPush {

    /** A cylinder of some length, its diameter of the values that were drawn. */
    private record Cylinder(ToDoubleFunction<double[]> diameter, double length) {
    }

    private final List<Double> radii;
    private final List<Cylinder> around = new ArrayList<>();
    private final List<Cylinder> within = new ArrayList<>();
    private final List<Piece> lumen;
    private final List<List<Solid>> beside;

    /**
     * Lays out the bends of a question.
     *
     * @param phase whether the device has its outline before or after use
     */
    BendPush(FitQuestion question, Phase phase, Draws draws) {
        this.radii = question.direction() != Direction.TIP_FIRST ? List.of()
                : question.conditions().bends().stream().filter(b -> b.where() == Bend.Where.LUMEN)
                        .map(b -> (double) b.radius().thirdNanometres()).toList();
        boolean asked = !radii.isEmpty();
        this.lumen = asked ? lumen(question, phase, draws) : List.of();
        this.beside = asked ? question.conditions().inside().stream().map(o -> solids(o, phase, draws)).toList()
                : List.of();
        if (asked) {
            addParts(question, new Parts(question.inner(), phase, draws));
        }
    }

    private static List<Piece> lumen(FitQuestion question, Phase phase, Draws draws) {
        return question.conditions().through()
                .map(t -> new Parts(t.extension(), phase, draws).lumen(t.lumen()))
                .orElseGet(() -> new Parts(question.outer(), phase, draws).lumen(question.lumen()));
    }

    private static List<Solid> solids(Occupant occupant, Phase phase, Draws draws) {
        return new Parts(occupant.device(), occupant.used() ? Phase.OUT : phase, draws).solids();
    }

    private void addParts(FitQuestion question, Parts parts) {
        Length opening = question.lumen().length().plus(
                question.conditions().through().map(Through::protrusion).orElse(Length.ZERO).min(Length.ZERO));
        long last = question.leastTravel().minus(opening).thirdNanometres();
        List<Solid> solids = parts.solids();
        long from = 0;
        long to = -1;
        for (ShaftSection section : parts.device().sections()) {
            if (section.rigid()) {
                boolean another = to < 0 || section.from().thirdNanometres() > to;
                from = another ? section.from().thirdNanometres() : from;
                to = another ? section.to().thirdNanometres() : Math.max(to, section.to().thirdNanometres());
                if (from < last) {
                    add(solids, section, from, to);
                }
            }
        }
    }

    /** What has been found of a run of sections so far stays: a longer run is only harder to pass. */
    private void add(List<Solid> solids, ShaftSection section, long from, long to) {
        around.add(new Cylinder(drawn -> solids.stream().map(Solid::whole).filter(p -> p.from() < to && p.to() > from)
                .mapToDouble(p -> Math.max(p.at(p.from(), drawn), p.at(p.to(), drawn))).max().orElse(0), to - from));
        long first = section.from().thirdNanometres();
        long end = section.to().thirdNanometres();
        within.add(new Cylinder(drawn -> solids.stream().map(s -> s.within().get(0))
                .filter(p -> p.from() < end && p.to() > first)
                .mapToDouble(p -> Math.min(p.at(p.from(), drawn), p.at(p.to(), drawn))).min().orElse(0),
                end - first));
    }

    /** Whether there is anything to push round a bend. */
    boolean isAsked() {
        return !around.isEmpty();
    }

    /** The least room of any part that surely is there; positive where all surely pass. */
    double surelyLeft(double[] drawn) {
        double narrowest = lumen.stream().mapToDouble(p -> Math.min(p.at(p.from(), drawn), p.at(p.to(), drawn))).min()
                .orElseThrow();
        List<Double> lying = beside.stream().map(solids -> solids.stream().map(Solid::whole)
                .mapToDouble(p -> Math.max(p.at(p.from(), drawn), p.at(p.to(), drawn))).max().orElse(0)).toList();
        return least(around, narrowest - Ring.enough(lying), drawn);
    }

    /** The least room of any part that may be there at most; negative where one surely stops. */
    double atMostLeft(double[] drawn) {
        double widest = lumen.stream().mapToDouble(p -> Math.max(p.at(p.from(), drawn), p.at(p.to(), drawn))).max()
                .orElseThrow();
        return least(within, widest, drawn);
    }

    private double least(List<Cylinder> cylinders, double diameter, double[] drawn) {
        double least = Double.POSITIVE_INFINITY;
        for (double radius : radii) {
            Torus torus = new Torus(diameter, radius);
            for (Cylinder cylinder : cylinders) {
                least = Math.min(least, torus.room(cylinder.diameter().applyAsDouble(drawn), cylinder.length()));
            }
        }
        return least;
    }

    /** Whether every bend is at least as wide as its lumen: sharper ones are no tori. */
    boolean isTorus(double[] drawn) {
        double widest = lumen.stream().mapToDouble(p -> Math.max(p.at(p.from(), drawn), p.at(p.to(), drawn))).max()
                .orElseThrow();
        return radii.stream().allMatch(radius -> radius >= widest);
    }
}
