/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.ferrule.engine.catalogue.CataloguedDevice;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.matrix.MatrixQuestion;

/**
 * A chart made ready to be solved: immutable, free of model objects.
 *
 * @param question what is asked
 * @param outer the lines, in the order of the question's
 * @param outerGroups the group of each line; empty where nothing is grouped
 * @param inner the columns, in the order of the question's
 * @param innerGroups the group of each column; empty where nothing is grouped
 * @param wire the wire that a condition names; absent where each device runs over its own
 * @param problems what could not be asked as it is written
 */
public record AssembledChart(MatrixQuestion question, List<AxisEntry> outer, List<String> outerGroups,
        List<CataloguedDevice> inner, List<String> innerGroups, Optional<Device> wire,
        List<ChartProblem> problems) {

    public AssembledChart {
        outer = List.copyOf(outer);
        outerGroups = List.copyOf(outerGroups);
        inner = List.copyOf(inner);
        innerGroups = List.copyOf(innerGroups);
        problems = List.copyOf(problems);
    }

    /** The same chart with problems that were found before it was assembled. */
    public AssembledChart after(List<ChartProblem> earlier) {
        List<ChartProblem> all = new ArrayList<>(earlier);
        all.addAll(problems);
        return new AssembledChart(question, outer, outerGroups, inner, innerGroups, wire, all);
    }
}
