/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;

import org.ferrule.chart.page.SignedOff;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.chart.words.UnitPreferences;
import org.ferrule.cli.internal.AnswerJson;
import org.ferrule.cli.internal.ChartRun;
import org.ferrule.cli.internal.CommandLineException;
import org.ferrule.fit.matrix.FitMatrix;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.io.csv.CsvLayout;
import org.ferrule.quantity.LengthUnit;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Solves a chart and writes it. */
@Command(name = "chart", mixinStandardHelpOptions = true, description = "Solves a fit chart and writes it in the format of each file name.")
final class ChartCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", description = "The chart.")
    private Path chart;

    @Option(names = "--out", paramLabel = "FILE", description = "Where to write; may be given several times.")
    private List<Path> outputs = new ArrayList<>();

    @Option(names = "--csv-layout", paramLabel = "LAYOUT", description = "How .csv files are laid out: pairs (a row for each pair; the default) or matrix (a row for each outer device, as on paper).")
    private CsvLayout csvLayout = CsvLayout.PAIRS;

    @Option(names = "--json", description = "Writes all answers to standard output as JSON.")
    private boolean json;

    @Override
    public Integer call() {
        if (outputs.isEmpty() && !json) {
            throw new CommandLineException("say where to write with --out, or --json");
        }
        ChartRun run = ChartRun.of(chart, spec.commandLine().getErr());
        for (Path output : outputs) {
            run.export(output, csvLayout).forEach(f -> spec.commandLine().getErr().println("wrote " + f));
        }
        if (json) {
            spec.commandLine().getOut().println(json(run.solved().matrix()).toPrettyString());
        }
        run.problems().forEach(p -> spec.commandLine().getErr().println(chart + ": " + p.place() + ": " + p.message()));
        run.signedOff().ifPresent(this::tell);
        boolean allFit = run.solved().matrix().counts().entrySet().stream()
                .allMatch(e -> e.getKey() == Verdict.FITS || e.getValue() == 0);
        return allFit && run.problems().isEmpty() ? Main.FITS : Main.OTHER;
    }

    private void tell(SignedOff signed) {
        spec.commandLine().getErr().println(chart + ": " + signed.head());
        signed.changes().forEach(change -> spec.commandLine().getErr().println("  " + change));
    }

    private static ArrayNode json(FitMatrix matrix) {
        AnswerJson writer = new AnswerJson(
                ReasonWords.english(UnitPreferences.in(LengthUnit.MILLIMETRE).with(LengthUnit.INCH)));
        ArrayNode cells = JsonNodeFactory.instance.arrayNode();
        for (int outer = 0; outer < matrix.question().outer().size(); outer++) {
            for (int inner = 0; inner < matrix.question().inner().size(); inner++) {
                cells.add(writer.write(matrix.question().question(outer, inner), matrix.answer(outer, inner)));
            }
        }
        return cells;
    }
}
