/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;

import org.ferrule.cli.internal.CommandLineException;
import org.ferrule.cli.internal.DocumentFiles;
import org.ferrule.cli.internal.PlanRun;
import org.ferrule.cli.internal.PurchaseReport;
import org.ferrule.engine.plan.AssembledCase;
import org.ferrule.engine.plan.Purchasing;
import org.ferrule.model.DocumentKind;
import org.ferrule.model.ShelfDocument;
import org.ferrule.purchase.Goal;
import org.ferrule.purchase.Purchase;
import org.ferrule.purchase.PurchaseAnswer;
import org.ferrule.purchase.PurchaseSolver;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Finds what to buy. */
@Command(name = "purchase", mixinStandardHelpOptions = true, description = "Finds the smallest, or the cheapest, purchase that makes cases ready. Exit code 1 when no purchase does.")
final class PurchaseCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", description = "The shelf, a file ending in .shelf.json.")
    private Path file;

    @Option(names = "--case", paramLabel = "FILE", required = true, description = "A case that is to be made ready; may be given several times.")
    private List<Path> cases = new ArrayList<>();

    @Option(names = "--rungs", paramLabel = "NUMBER", description = "How many techniques of each axis are to be ready in each case, all at once; by default 1.")
    private int rungs = 1;

    @Option(names = "--cheapest", description = "The least sum of prices instead of the fewest units; what has no price is not bought.")
    private boolean cheapest;

    @Option(names = "--json", description = "Writes JSON.")
    private boolean json;

    @Override
    public Integer call() {
        if (rungs < 0) {
            throw new CommandLineException("--rungs " + rungs + ": expected 0 or more");
        }
        Map<String, AssembledCase> read = read();
        PurchaseAnswer answer = PurchaseSolver
                .solve(Purchasing.problem(read, rungs, cheapest ? Goal.CHEAPEST : Goal.SMALLEST));
        PurchaseReport report = new PurchaseReport(answer);
        if (json) {
            spec.commandLine().getOut().println(report.json().toPrettyString());
        } else {
            report.lines().forEach(spec.commandLine().getOut()::println);
        }
        return answer instanceof Purchase ? Main.FITS : Main.OTHER;
    }

    /** The cases by the names of their files, each with this shelf. */
    private Map<String, AssembledCase> read() {
        ShelfDocument shelf = new DocumentFiles().require(file, ShelfDocument.class, DocumentKind.SHELF);
        Map<String, AssembledCase> read = new LinkedHashMap<>();
        for (Path each : cases) {
            PlanRun run = PlanRun.with(shelf, each, Optional.empty());
            run.problems().forEach(spec.commandLine().getErr()::println);
            if (read.put(each.getFileName().toString(), run.assembled()) != null) {
                throw new CommandLineException("two cases are called " + each.getFileName());
            }
        }
        return read;
    }
}
