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

import org.ferrule.cli.internal.DayConverter;
import org.ferrule.cli.internal.ShelfJson;
import org.ferrule.cli.internal.ShelfRun;
import org.ferrule.cli.internal.ShelfText;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells what lies on a shelf, and how ready it is for cases. */
@Command(name = "shelf", mixinStandardHelpOptions = true, description = "Tells what lies on a shelf, what is below par, what has expired, and how ready it is for cases that share it.", footer = {
    "", "Exit code: 0 all in order, 1 something is below par, expired, missing or not at hand, 2 could not run." })
final class ShelfCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", description = "The shelf.")
    private Path file;

    @Option(names = "--case", paramLabel = "CASE", description = "A case that is planned from this shelf; may be given several times. They are served by their days, those of one day as they are named.")
    private List<Path> cases = new ArrayList<>();

    @Option(names = "--day", paramLabel = "DAY", converter = DayConverter.class, description = "The day on which stock is looked at, and the cases are done; by default today, and the days of the cases.")
    private LocalDate day;

    @Option(names = "--json", description = "Writes it all as JSON.")
    private boolean json;

    @Override
    public Integer call() {
        ShelfRun run = new ShelfRun(file, cases, Optional.ofNullable(day));
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            out.println(new ShelfJson(run).write().toPrettyString());
        } else {
            new ShelfText(run, out).print();
        }
        run.problems().forEach(spec.commandLine().getErr()::println);
        return run.isInOrder() ? Main.FITS : Main.OTHER;
    }
}
