/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;

import org.ferrule.cli.internal.CommandLineException;
import org.ferrule.cli.internal.ValidationJson;
import org.ferrule.cli.internal.ValidationMarkdown;
import org.ferrule.cli.internal.ValidationRun;
import org.ferrule.fit.engineering.validation.CheckResult;
import org.ferrule.fit.engineering.validation.ValidationReport;
import org.ferrule.io.csv.ValidationCsv;
import org.ferrule.io.json.AtomicFiles;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Checks the program against published values. */
@Command(name = "validate", mixinStandardHelpOptions = true, description = "Computes every published value that ships with the program and reports which are met.")
final class ValidateCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Option(names = "--rules", paramLabel = "FILE", description = "A rule set that is checked against the facts of the trade too.")
    private Path rules;

    @Option(names = "--out", paramLabel = "FILE", description = "Where to write the full report: a file that ends in .md or .csv.")
    private Path output;

    @Option(names = "--json", description = "Writes the full report as JSON.")
    private boolean json;

    @Override
    public Integer call() {
        if (output != null && !isMarkdown() && !isCsv()) {
            throw new CommandLineException("no report is known for " + output + "; known are .md, .csv");
        }
        String version = String.join(" ", new VersionProvider().getVersion());
        ValidationReport report = ValidationRun.of(version, Optional.ofNullable(rules), LocalDate.now());
        if (output != null) {
            write(report);
        }
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            out.println(ValidationJson.of(report).toPrettyString());
        } else {
            summarise(report, out);
        }
        return report.failures().isEmpty() ? Main.FITS : Main.OTHER;
    }

    private static void summarise(ValidationReport report, PrintWriter out) {
        for (String table : report.tables()) {
            List<CheckResult> results = report.of(table);
            out.println(table + ": " + results.stream().filter(CheckResult::passed).count() + " of " + results.size()
                    + " met");
        }
        report.failures().forEach(f -> out.println("NOT MET: " + f.table() + " " + f.id() + ", " + f.subject()
                + ": published " + f.expected() + ", computed " + f.computed() + " (" + f.source() + ")"));
        out.println(report.head().version() + ", " + report.head().date());
    }

    private void write(ValidationReport report) {
        try {
            AtomicFiles.write(output.toAbsolutePath(), text(report).getBytes(StandardCharsets.UTF_8));
            spec.commandLine().getErr().println("wrote " + output);
        } catch (IOException e) {
            throw new CommandLineException(output + " cannot be written: " + e.getMessage());
        }
    }

    private String text(ValidationReport report) throws IOException {
        if (isMarkdown()) {
            return ValidationMarkdown.of(report);
        }
        StringBuilder text = new StringBuilder();
        ValidationCsv.write(report, text);
        return text.toString();
    }

    private boolean isMarkdown() {
        return output.getFileName().toString().endsWith(".md");
    }

    private boolean isCsv() {
        return output.getFileName().toString().endsWith(".csv");
    }
}
