/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli;

import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;

import org.ferrule.cli.internal.BudgetWords;
import org.ferrule.cli.internal.CommandLineException;
import org.ferrule.cli.internal.PairOptions;
import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.engine.catalogue.ReferenceException;
import org.ferrule.fit.FitSolver;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.engineering.size.BudgetSearch;
import org.ferrule.fit.engineering.size.ToleranceBudget;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.rules.RuleSetException;
import org.ferrule.fit.verdict.Verdict;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Tells what would turn "tight" into "fits". */
@Command(name = "budget", mixinStandardHelpOptions = true, description = "Tells how much less tolerance, or how much less required clearance, would turn \"tight\" into \"fits\".")
final class BudgetCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private PairOptions pair = new PairOptions();

    @Option(names = "--json", description = "Writes the answer as JSON.")
    private boolean json;

    @Override
    public Integer call() {
        try {
            return answer();
        } catch (ReferenceException | RuleSetException e) {
            throw new CommandLineException(e.getMessage());
        }
    }

    private int answer() {
        Catalogue catalogue = pair.options().catalogue();
        FitQuestion question = pair.question(catalogue);
        FitSolver solver = pair.options().solver(catalogue);
        Verdict verdict = solver.answer(question).in(Phase.IN).verdict();
        Optional<ToleranceBudget> budget = BudgetSearch.of(question, solver);
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            ObjectNode node = JsonNodeFactory.instance.objectNode().put("verdict", verdict.word());
            node.set("budget", budget.map(BudgetWords::json).orElse(null));
            out.println(node.toPrettyString());
        } else {
            out.println(verdict.word());
            budget.ifPresentOrElse(b -> BudgetWords.lines(b).forEach(out::println),
                    () -> out.println("no tolerance decides: only a pair that is tight by geometry has a budget, and "
                            + "beside others only round outlines"));
        }
        return verdict == Verdict.FITS ? Main.FITS : Main.OTHER;
    }
}
