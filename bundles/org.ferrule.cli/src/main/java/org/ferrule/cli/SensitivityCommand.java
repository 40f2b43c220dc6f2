/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;

import org.ferrule.cli.internal.ChartRun;
import org.ferrule.cli.internal.CommandLineException;
import org.ferrule.cli.internal.EngineeringPages;
import org.ferrule.cli.internal.InfluenceTable;
import org.ferrule.cli.internal.PageFiles;
import org.ferrule.cli.internal.TerminalProgress;
import org.ferrule.fit.engineering.sensitivity.Influence;
import org.ferrule.fit.engineering.sensitivity.Sensitivity;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Ranks the dimensions behind a chart. */
@Command(name = "sensitivity", mixinStandardHelpOptions = true, description = "Ranks the printed dimensions and statements of a chart by the verdicts, going in, that rest on them.", footer = {
    "", "changes: verdicts that change when the part lies at one end of its interval or the other.",
    "decides: verdicts that it decides as it stands.",
    "settles: verdicts that change when measuring finds it at its centre; \"-\" where its spread is stated." })
final class SensitivityCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "CHART", description = "The chart.")
    private Path chart;

    @Option(names = "--top", paramLabel = "N", description = "Only the first N; by default all.")
    private int top = Integer.MAX_VALUE;

    @Option(names = "--out", paramLabel = "FILE", description = "Where to write the first 25 of them as bars, as .pdf, .svg or .png; may be given several times.")
    private List<Path> outputs = new ArrayList<>();

    @Option(names = "--json", description = "Writes the list as JSON.")
    private boolean json;

    @Override
    public Integer call() {
        if (top < 1) {
            throw new CommandLineException("--top must be 1 or more, not " + top);
        }
        PrintWriter err = spec.commandLine().getErr();
        ChartRun run = ChartRun.of(chart, err);
        List<Influence> ranked = Sensitivity.of(run.solved().matrix(), run.solved().chart().wire(),
                new TerminalProgress(err, "looking into dimensions")).stream().limit(top).toList();
        for (Path output : outputs) {
            PageFiles.write(EngineeringPages.sensitivity(ranked, run.content().basis().rules()), output)
                    .forEach(file -> err.println("wrote " + file));
        }
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            out.println(InfluenceTable.json(ranked).toPrettyString());
        } else {
            InfluenceTable.lines(ranked).forEach(out::println);
        }
        run.problems().forEach(p -> err.println(chart + ": " + p.place() + ": " + p.message()));
        return run.problems().isEmpty() ? Main.FITS : Main.OTHER;
    }
}
