/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;

import org.ferrule.cli.internal.ChartRun;
import org.ferrule.cli.internal.CommandLineException;
import org.ferrule.chart.page.PaperFormat;
import org.ferrule.cli.internal.DocumentFiles;
import org.ferrule.cli.internal.PlanRun;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.model.DocumentKind;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes every chart of a folder in every format. */
@Command(name = "demo", mixinStandardHelpOptions = true, description = "Solves every chart of a folder and writes it in every format; plans every case and writes its sheet.")
final class DemoCommand implements Callable<Integer> {
    private static final List<String> SHEETS = List.of(".pdf", ".svg");

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "FOLDER", description = "The folder with the charts, at any depth.")
    private Path seeds;

    @Parameters(index = "1", paramLabel = "OUTPUT", description = "The folder to write to.")
    private Path output;

    @Override
    public Integer call() {
        List<Path> charts = DocumentFiles.below(seeds, DocumentKind.CHART);
        if (charts.isEmpty()) {
            throw new CommandLineException("there is no chart in " + seeds);
        }
        charts.forEach(this::write);
        DocumentFiles.below(seeds, DocumentKind.CASE).forEach(this::plan);
        return Main.FITS;
    }

    private void write(Path chart) {
        ChartRun run = ChartRun.of(chart, spec.commandLine().getErr());
        String fileName = chart.getFileName().toString();
        String baseName = fileName.substring(0, fileName.length() - DocumentKind.CHART.suffix().length());
        PrintWriter out = spec.commandLine().getOut();
        out.println(run.content().imprint().title());
        for (String format : run.formats()) {
            run.export(output.resolve(baseName + "." + format)).forEach(f -> out.println("  wrote " + f));
        }
        out.println("  verdicts: " + counts(run.solved().matrix().counts()));
        run.problems().forEach(p -> out.println("  problem: " + p.place() + ": " + p.message()));
    }

    private void plan(Path file) {
        PlanRun run = PlanRun.of(file, Optional.empty());
        String fileName = file.getFileName().toString();
        String baseName = fileName.substring(0, fileName.length() - DocumentKind.CASE.suffix().length());
        PrintWriter out = spec.commandLine().getOut();
        out.println(run.plan().file().title());
        for (String format : SHEETS) {
            Path sheet = output.resolve(baseName + format);
            run.export(sheet, new PaperFormat(PaperFormat.Size.A4, false), Optional.empty());
            out.println("  wrote " + sheet);
        }
        out.println("  steps: " + run.plan().rungs().size());
        run.problems().forEach(problem -> out.println("  problem: " + problem));
    }

    private static String counts(Map<Verdict, Integer> counts) {
        return counts.entrySet().stream().map(e -> e.getValue() + " " + e.getKey().word())
                .collect(Collectors.joining(", "));
    }
}
