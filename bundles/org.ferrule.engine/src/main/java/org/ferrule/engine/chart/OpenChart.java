/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.chart;

import java.util.List;

import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.engine.catalogue.LibraryReader;
import org.ferrule.engine.translate.RuleTranslator;
import org.ferrule.fit.check.FitCheck;
import org.ferrule.fit.matrix.FitMatrix;
import org.ferrule.fit.matrix.Progress;
import org.ferrule.model.FitChart;
import org.ferrule.model.RuleSet;

/**
 * A chart with the documents that it refers to.
 *
 * @param chart the chart
 * @param libraries in the chart's order
 * @param rules its rule set
 */
public record OpenChart(FitChart chart, List<LibraryReader> libraries, RuleSet rules) {

    public OpenChart {
        libraries = List.copyOf(libraries);
    }

    /** Makes the chart ready to be solved. */
    public AssembledChart assemble(List<FitCheck> checks) {
        return new ChartAssembler(checks).assemble(chart, Catalogue.of(libraries), RuleTranslator.translate(rules));
    }

    /** Solves the chart, once. */
    public SolvedChart solve(List<FitCheck> checks, Progress progress) {
        AssembledChart assembled = assemble(checks);
        return new SolvedChart(assembled, FitMatrix.solve(assembled.question(), progress));
    }
}
