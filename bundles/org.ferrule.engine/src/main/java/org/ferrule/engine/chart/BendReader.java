/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.chart;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import org.ferrule.fit.passage.Bend;
import org.ferrule.fit.passage.Bend.Where;
import org.ferrule.model.BendPlace;
import org.ferrule.model.VesselPath;
import org.ferrule.model.VesselSegment;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;

/** Reads the bends of a chart: those that its conditions name, and those of its vessel path as far as it is asked. */
final class BendReader {
    private final List<ChartProblem> problems;
    private final List<Bend> bends;

    /**
     * A reader.
     *
     * @param problems where problems go
     * @param bends where bends go
     */
    BendReader(List<ChartProblem> problems, List<Bend> bends) {
        this.problems = problems;
        this.bends = bends;
    }

    /**
     * Adds a bend of the conditions.
     *
     * @param index of the bend among them
     * @param unreadable what happens where a bend of the lumen cannot be read: a vessel's decides nothing
     */
    void add(int index, org.ferrule.model.Bend bend, Runnable unreadable) {
        Where where = bend.getWhere() == BendPlace.VESSEL ? Where.VESSEL : Where.LUMEN;
        boolean read = add(where, bend.getRadius(), bend.getAngleDegrees(),
                message -> new ChartProblem("bends", index, "radius", message));
        if (!read && where == Where.LUMEN) {
            unreadable.run();
        }
    }

    /** Adds the bends of a path that begin before the place that is asked for, or all where none is. */
    void addPath(VesselPath path, Optional<Length> reach) {
        Optional<Length> start = Optional.of(Length.ZERO);
        for (VesselSegment segment : path.getSegments()) {
            boolean passed = start.isEmpty() || reach.isEmpty() || start.get().compareTo(reach.get()) < 0;
            boolean straight = segment.getBendAngleDegrees() != null && segment.getBendAngleDegrees().signum() == 0;
            if (passed && !straight && segment.getBendRadius() != null) {
                add(Where.VESSEL, segment.getBendRadius(), segment.getBendAngleDegrees(),
                        message -> new ChartProblem("path", message));
            }
            start = start.flatMap(s -> readable(segment.getLength()).map(s::plus));
        }
    }

    private boolean add(Where where, Dimension radius, BigDecimal angleDegrees,
            Function<String, ChartProblem> problem) {
        Optional<Length> read = readable(radius).filter(r -> r.compareTo(Length.ZERO) > 0);
        boolean turns = angleDegrees == null || angleDegrees.signum() > 0;
        if (read.isEmpty() || !turns) {
            problems.add(problem.apply(radius == null ? "a bend has no radius"
                    : "a bend of " + radius.text() + angle(angleDegrees) + " cannot be asked about"));
            return false;
        }
        bends.add(new Bend(where, read.get(), Optional.ofNullable(angleDegrees)));
        return true;
    }

    private static String angle(BigDecimal degrees) {
        return degrees == null ? "" : " over " + degrees.toPlainString() + " degrees";
    }

    private static Optional<Length> readable(Dimension printed) {
        return Optional.ofNullable(printed).filter(Dimension::readable).map(Dimension::label);
    }
}
