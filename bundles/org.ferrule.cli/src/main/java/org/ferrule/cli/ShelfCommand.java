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

import org.ferrule.cli.internal.CommandLineException;
import org.ferrule.cli.internal.DayConverter;
import org.ferrule.cli.internal.SheetJson;
import org.ferrule.cli.internal.SheetRun;
import org.ferrule.cli.internal.ShelfJson;
import org.ferrule.cli.internal.ShelfRun;
import org.ferrule.cli.internal.ShelfText;
import org.ferrule.shelf.sheet.ReadShelf;
import org.ferrule.shelf.sheet.ShelfChange;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells what lies on a shelf, and how ready it is for cases. */
@Command(name = "shelf", mixinStandardHelpOptions = true, description = "Tells what lies on a shelf, what is below par, what has expired, and how ready it is for cases that share it.", footer = {
    "",
    "Exit code: 0 all in order, 1 something is below par, expired, missing or not at hand, 2 could not run, or a sheet has faults, each told with its row. With --out and --in: 0." })
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

    @Option(names = "--out", paramLabel = "SHEET", description = "Writes the shelf as a sheet, .csv or .xlsx, and tells nothing else.")
    private Path out;

    @Option(names = "--in", paramLabel = "SHEET", description = "Tells what a sheet, .csv or .xlsx, would change; writes nothing without --write.")
    private Path in;

    @Option(names = "--remove-missing", description = "With --in: items that the sheet does not have are removed; by default they stay.")
    private boolean removing;

    @Option(names = "--write", description = "With --in: takes the sheet over into the shelf.")
    private boolean write;

    @Override
    public Integer call() {
        if (in == null && (write || removing) || in != null && out != null) {
            throw new CommandLineException("--write and --remove-missing go with --in, and --in goes without --out");
        }
        if (out != null) {
            new SheetRun(file).export(out);
            spec.commandLine().getErr().println("wrote " + out);
            return Main.FITS;
        }
        return in == null ? tell() : takeIn();
    }

    private int takeIn() {
        SheetRun run = new SheetRun(file);
        ReadShelf sheet = run.read(in);
        List<ShelfChange> changes = run.changes(sheet, removing);
        PrintWriter to = spec.commandLine().getOut();
        if (json) {
            to.println(SheetJson.write(changes, sheet.unknownColumns()).toPrettyString());
        } else {
            changes.forEach(change -> to.println(SheetRun.line(change)));
            to.println(changes.isEmpty() ? "nothing changes"
                    : changes.size() + (changes.size() == 1 ? " change" : " changes"));
        }
        sheet.unknownColumns().forEach(column -> spec.commandLine().getErr()
                .println(in + ": the column \"" + column + "\" means nothing here, and is not read"));
        if (write && !changes.isEmpty()) {
            run.take(sheet, removing);
            spec.commandLine().getErr().println("wrote " + file);
        }
        return Main.FITS;
    }

    private int tell() {
        ShelfRun run = new ShelfRun(file, cases, Optional.ofNullable(day));
        PrintWriter to = spec.commandLine().getOut();
        if (json) {
            to.println(new ShelfJson(run).write().toPrettyString());
        } else {
            new ShelfText(run, to).print();
        }
        run.problems().forEach(spec.commandLine().getErr()::println);
        return run.isInOrder() ? Main.FITS : Main.OTHER;
    }
}
