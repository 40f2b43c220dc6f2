/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;

import org.ferrule.cli.internal.ChartRun;
import org.ferrule.cli.internal.CommandLineException;
import org.ferrule.cli.internal.OpinionRun;
import org.ferrule.cli.internal.OpinionWords;
import org.ferrule.cli.internal.PairOptions;
import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.engine.catalogue.ReferenceException;
import org.ferrule.fit.rules.RuleSetException;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Compares the lanes with parts drawn at random. */
@Command(name = "second-opinion", mixinStandardHelpOptions = true, description = "Draws parts at random within their tolerances, pushes them through by another method, and compares with the solver.")
final class SecondOpinionCommand implements Callable<Integer> {
    private static final int MOST_LINES = 40;

    @Spec
    private CommandSpec spec;

    @Parameters(arity = "0..1", paramLabel = "CHART", description = "A chart, all pairs of which are compared; or name one pair with the options.")
    private Path chart;

    @Mixin
    private PairOptions pair = new PairOptions();

    @Option(names = "--seed", paramLabel = "N", description = "Repeats the draws of that seed; 1 by default.")
    private long seed = 1;

    @Option(names = "--samples", paramLabel = "N", description = "How many parts to draw for each pair; 1000 by default.")
    private int samples = 1000;

    @Option(names = "--json", description = "Writes the comparison as JSON.")
    private boolean json;

    @Override
    public Integer call() {
        OpinionRun run = new OpinionRun(seed, samples);
        try {
            ask(run);
        } catch (ReferenceException | RuleSetException e) {
            throw new CommandLineException(e.getMessage());
        }
        write(run);
        run.contradictions().forEach(line -> line.opinion().contradictions()
                .forEach(c -> spec.commandLine().getErr().println(OpinionWords.alarm(line, c))));
        return run.contradictions().isEmpty() ? Main.FITS : Main.OTHER;
    }

    private void ask(OpinionRun run) {
        if ((chart != null) == pair.isGiven()) {
            throw new CommandLineException("name a chart, or a pair with --library, --outer and --inner");
        }
        if (chart != null) {
            run.ask(ChartRun.of(chart, spec.commandLine().getErr()).solved().matrix().question());
            return;
        }
        Catalogue catalogue = pair.options().catalogue();
        run.ask(pair.question(catalogue));
        if (run.compared() == 0) {
            throw new CommandLineException("nothing to compare: " + run.lines().get(0).why());
        }
    }

    private void write(OpinionRun run) {
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            ArrayNode array = JsonNodeFactory.instance.arrayNode();
            run.lines().forEach(line -> array.add(OpinionWords.json(line)));
            out.println(array.toPrettyString());
            return;
        }
        if (run.lines().size() <= MOST_LINES) {
            run.lines().forEach(line -> out.println(OpinionWords.line(line)));
        }
        out.println(run.compared() + " of " + run.lines().size() + " compared, seed " + seed + ", " + samples
                + " parts each: " + (run.contradictions().isEmpty() ? "no disagreement"
                        : run.contradictions().size() + " DISAGREE"));
    }
}
