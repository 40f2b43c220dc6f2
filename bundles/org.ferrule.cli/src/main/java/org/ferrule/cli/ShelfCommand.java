/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;

import org.ferrule.cli.internal.Cases;
import org.ferrule.cli.internal.DocumentFiles;
import org.ferrule.cli.internal.ShelfReport;
import org.ferrule.escalation.equipment.Stock;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Looks at a shelf. */
@Command(name = "shelf", mixinStandardHelpOptions = true, description = "Tells what of a shelf has expired or is below par, and how ready it is for cases. Exit code 1 when something has expired or is below par.")
final class ShelfCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", description = "The shelf, a file ending in .shelf.json.")
    private Path file;

    @Option(names = "--day", paramLabel = "DATE", description = "The day, year-month-day; by default today.")
    private LocalDate day = LocalDate.now();

    @Option(names = "--case", paramLabel = "FILE", description = "A case whose readiness is asked about; may be given several times.")
    private List<Path> cases = new ArrayList<>();

    @Option(names = "--json", description = "Writes JSON.")
    private boolean json;

    @Override
    public Integer call() {
        Stock stock = new DocumentFiles().stock(file, spec.commandLine().getErr()::println);
        ShelfReport report = ShelfReport.of(stock, day, Cases.of(cases, file));
        if (json) {
            spec.commandLine().getOut().println(report.json().toPrettyString());
        } else {
            report.lines().forEach(spec.commandLine().getOut()::println);
        }
        return report.isInOrder() ? Main.FITS : Main.OTHER;
    }
}
