/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.chart;

import java.util.List;
import java.util.Optional;

import org.ferrule.engine.translate.VesselWay;
import org.ferrule.fit.passage.Bend.Where;
import org.ferrule.fit.passage.Bend;
import org.ferrule.model.BendPlace;
import org.ferrule.model.VesselPath;
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
        Optional<Length> vessel = where == Where.LUMEN ? Optional.empty()
                : way(index, "vesselDiameter").width(bend.getVesselDiameter());
        Optional<Bend> read = way(index, "radius").bend(where, bend.getRadius(), bend.getAngleDegrees(), vessel);
        read.ifPresent(bends::add);
        if (read.isEmpty() && where == Where.LUMEN) {
            unreadable.run();
        }
    }

    private VesselWay way(int index, String key) {
        return new VesselWay(message -> problems.add(new ChartProblem("bends", index, key, message)));
    }

    /** Adds the bends of a path that begin before the place that is asked for, or all where none is. */
    void addPath(VesselPath path, Optional<Length> reach) {
        bends.addAll(new VesselWay(message -> problems.add(new ChartProblem("path", message))).bends(path, reach));
    }
}
