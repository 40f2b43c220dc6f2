/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;

import org.ferrule.chart.page.PaperFormat;
import org.ferrule.cli.internal.CommandLineException;
import org.ferrule.cli.internal.DayConverter;
import org.ferrule.cli.internal.PlanJson;
import org.ferrule.cli.internal.PlanRun;
import org.ferrule.cli.internal.PlanText;
import org.ferrule.plansheet.why.OrderReasons;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Plans a case. */
@Command(name = "plan", mixinStandardHelpOptions = true, description = "Plans a case: what to do next, with what from the shelf, and when to stop.", footer = {
    "", "Exit code: 0 something on the ladder can be done, 1 nothing can, or problems were found, 2 could not run.",
    "Not a medical device. The instructions for use and the operator decide." })
final class PlanCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "CASE", description = "The case.")
    private Path file;

    @Option(names = "--day", paramLabel = "DAY", converter = DayConverter.class, description = "The day on which it is done, such as 2026-04-02; by default that of the case.")
    private LocalDate day;

    @Option(names = { "--output",
        "--out" }, paramLabel = "FILE", description = "Writes the plan sheet, one page, as .pdf or .svg; may be given several times.")
    private List<Path> outputs = new ArrayList<>();

    @Option(names = "--pdf", paramLabel = "FILE", description = "The same as --output with a file that ends in .pdf.")
    private Path pdf;

    @Option(names = "--paper", paramLabel = "SIZE", description = "A4 (the default), LETTER, A3 or TABLOID.")
    private PaperFormat.Size paper = PaperFormat.Size.A4;

    @Option(names = "--sensitivity", description = "Tells how far each figure may move before the order changes, and what the conventional order gives up. A long ladder takes a while.")
    private boolean sensitivity;

    @Option(names = "--why", description = "Tells all reasons why something cannot be done; without it, or --json, the first in one line.")
    private boolean why;

    @Option(names = "--json", description = "Writes the plan as JSON.")
    private boolean json;

    @Override
    public Integer call() {
        if (pdf != null && !pdf.toString().endsWith(".pdf")) {
            throw new CommandLineException("--pdf asks for a file that ends in .pdf, not " + pdf);
        }
        PlanRun run = PlanRun.of(file, Optional.ofNullable(day));
        Optional<OrderReasons> reasons = sensitivity ? Optional.of(OrderReasons.of(run.plan())) : Optional.empty();
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            out.println(new PlanJson(run.plan(), run.words(), run.limits(), reasons).write()
                    .put("closed", run.closed().orElse(null)).toPrettyString());
        } else {
            run.closed().ifPresent(closed -> out.println("Closed on " + closed
                    + ". This is what would be planned from the log as it stands; nothing is to be done any more.\n"));
            new PlanText(run.plan(), run.words(), run.limits(), reasons, why, out).print();
        }
        PrintWriter err = spec.commandLine().getErr();
        export(run, reasons, err);
        run.problems().forEach(err::println);
        return run.plan().canGoOn() && run.problems().isEmpty() ? Main.FITS : Main.OTHER;
    }

    private void export(PlanRun run, Optional<OrderReasons> reasons, PrintWriter err) {
        List<Path> all = new ArrayList<>(outputs);
        Optional.ofNullable(pdf).ifPresent(all::add);
        for (Path output : all) {
            run.export(output, new PaperFormat(paper, false), reasons);
            err.println("wrote " + output);
        }
    }
}
