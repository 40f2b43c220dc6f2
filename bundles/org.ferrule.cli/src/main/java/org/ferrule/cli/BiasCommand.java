/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;

import org.ferrule.cli.internal.BiasRun;
import org.ferrule.fit.engineering.bias.BiasComparison;
import org.ferrule.fit.engineering.bias.BiasComparison.Cell;
import org.ferrule.fit.matrix.MatrixQuestion;
import org.ferrule.fit.rules.Span;
import org.ferrule.fit.verdict.Verdict;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Compares a chart with itself without bias. */
@Command(name = "bias", mixinStandardHelpOptions = true, description = "Tells which verdicts of a chart change because the rule set says that kinds of stated figures run low.")
final class BiasCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "CHART", description = "The chart.")
    private Path chart;

    @Option(names = "--json", description = "Writes the comparison as JSON.")
    private boolean json;

    @Override
    public Integer call() {
        BiasComparison comparison = BiasRun.of(chart, spec.commandLine().getErr());
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            out.println(json(comparison).toPrettyString());
        } else {
            write(comparison, out);
        }
        return Main.FITS;
    }

    private static void write(BiasComparison comparison, PrintWriter out) {
        MatrixQuestion question = comparison.with().question();
        if (question.rules().spans().stream().noneMatch(Span::runsLow)) {
            out.println(
                    "the rule set \"" + question.rules().title() + "\" says of no kind of figures that it runs low");
        }
        for (Cell cell : comparison.changed()) {
            out.println(question.inner().get(cell.innerIndex()).device().id() + " in "
                    + question.outer().get(cell.outerIndex()).device().device().id() + ", " + way(cell) + ": "
                    + cell.with().word() + ", without the bias " + cell.without().word());
        }
        out.println("verdicts going in: " + counts(comparison.countsWith()) + "; without the bias "
                + counts(comparison.countsWithout()));
    }

    private static String way(Cell cell) {
        return cell.phase().name().toLowerCase(Locale.ROOT);
    }

    private static String counts(Map<Verdict, Integer> counts) {
        return counts.entrySet().stream().map(e -> e.getValue() + " " + e.getKey().word())
                .collect(Collectors.joining(", "));
    }

    private static ObjectNode json(BiasComparison comparison) {
        MatrixQuestion question = comparison.with().question();
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        ArrayNode changed = node.putArray("changed");
        for (Cell cell : comparison.changed()) {
            changed.addObject().put("outer", question.outer().get(cell.outerIndex()).device().device().id())
                    .put("lumen", question.outer().get(cell.outerIndex()).lumen().name())
                    .put("inner", question.inner().get(cell.innerIndex()).device().id()).put("phase", way(cell))
                    .put("with", cell.with().word()).put("without", cell.without().word());
        }
        addCounts(node.putObject("with"), comparison.countsWith());
        addCounts(node.putObject("without"), comparison.countsWithout());
        return node;
    }

    private static void addCounts(ObjectNode node, Map<Verdict, Integer> counts) {
        counts.forEach((verdict, count) -> node.put(verdict.word(), count));
    }
}
