/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.chart;

import java.util.List;

import org.ferrule.engine.catalogue.CataloguedDevice;
import org.ferrule.fit.matrix.MatrixQuestion;

/**
 * A chart made ready to be solved: immutable, free of model objects.
 *
 * @param question what is asked
 * @param outer the lines, in the order of the question's
 * @param outerGroups the group of each line; empty where nothing is grouped
 * @param inner the columns, in the order of the question's
 * @param innerGroups the group of each column; empty where nothing is grouped
 * @param problems what could not be asked as it is written
 */
public record AssembledChart(MatrixQuestion question, List<AxisEntry> outer, List<String> outerGroups,
        List<CataloguedDevice> inner, List<String> innerGroups, List<ChartProblem> problems) {

    public AssembledChart {
        outer = List.copyOf(outer);
        outerGroups = List.copyOf(outerGroups);
        inner = List.copyOf(inner);
        innerGroups = List.copyOf(innerGroups);
        problems = List.copyOf(problems);
    }
}
