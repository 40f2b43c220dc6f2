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
import org.ferrule.cli.internal.RecordJson;
import org.ferrule.cli.internal.RecordRun;
import org.ferrule.engine.closed.ClosedCase;
import org.ferrule.engine.closed.ClosedCaseText;
import org.ferrule.plansheet.why.OrderReasons;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

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
        PrintWriter out = spec.commandLine().getOut();
        Optional<ClosedCase> closed = RecordRun.of(file);
        if (!json) {
            closed.ifPresent(record -> print(record, out));
        }
        PlanRun run = plan(closed, out);
        Optional<OrderReasons> reasons = sensitivity ? Optional.of(OrderReasons.of(run.plan())) : Optional.empty();
        if (json) {
            out.println(with(closed, new PlanJson(run.plan(), run.words(), run.limits(), reasons).write())
                    .toPrettyString());
        } else {
            new PlanText(run.plan(), run.words(), run.limits(), reasons, why, out).print();
        }
        PrintWriter err = spec.commandLine().getErr();
        export(run, reasons, err);
        run.problems().forEach(err::println);
        return run.plan().canGoOn() && run.problems().isEmpty() ? Main.FITS : Main.OTHER;
    }

    /** A record is told even where nothing can be planned any more, because a document is gone. */
    private PlanRun plan(Optional<ClosedCase> closed, PrintWriter out) {
        try {
            return PlanRun.of(file, Optional.ofNullable(day));
        } catch (CommandLineException e) {
            if (json && closed.isPresent()) {
                out.println(with(closed, JsonNodeFactory.instance.objectNode().put("case", closed.get().title()))
                        .toPrettyString());
            }
            throw e;
        }
    }

    private static ObjectNode with(Optional<ClosedCase> closed, ObjectNode plan) {
        plan.put("closed", closed.map(ClosedCase::closed).orElse(null));
        return plan.set("record", closed.map(RecordJson::write).orElse(null));
    }

    private static void print(ClosedCase closed, PrintWriter out) {
        ClosedCaseText.lines(closed).forEach(out::println);
        out.println("\nWhat would be planned from the log as it stands; nothing is to be done any more:\n");
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
