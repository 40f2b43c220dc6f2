/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;

import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.engine.chart.ChartAssembler;
import org.ferrule.engine.chart.OpenChart;
import org.ferrule.engine.extension.Extensions;
import org.ferrule.engine.translate.RuleTranslator;
import org.ferrule.fit.check.FitCheck;
import org.ferrule.fit.engineering.bias.BiasComparison;
import org.ferrule.fit.matrix.FitMatrix;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.fit.rules.RuleSetException;

/** Solves a chart twice: under its rule set, and under the same without bias. */
public final class BiasRun {
    private final OpenChart open;
    private final Catalogue catalogue;
    private final List<FitCheck> checks;
    private final PrintWriter err;

    private BiasRun(OpenChart open, PrintWriter err) {
        this.open = open;
        this.catalogue = Catalogue.of(open.libraries());
        this.checks = Extensions.ofClassPath(BiasRun.class.getClassLoader()).checks();
        this.err = err;
    }

    /** Compares both. */
    public static BiasComparison of(Path chart, PrintWriter err) {
        BiasRun run = new BiasRun(new DocumentFiles().chart(chart), err);
        try {
            RuleSet rules = RuleTranslator.translate(run.open.rules());
            return BiasComparison.of(run.solve(rules), run.solve(rules.withoutBias()));
        } catch (RuleSetException e) {
            throw new CommandLineException(chart + ": " + e.getMessage());
        }
    }

    private FitMatrix solve(RuleSet rules) {
        return FitMatrix.solve(new ChartAssembler(checks).assemble(open.chart(), catalogue, rules).question(),
                new TerminalProgress(err, "solving"));
    }
}
