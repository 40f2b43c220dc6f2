/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.csv;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.ferrule.fit.engineering.validation.CheckResult;
import org.ferrule.fit.engineering.validation.ReportHead;
import org.ferrule.fit.engineering.validation.ReportHead.RuleFile;
import org.ferrule.fit.engineering.validation.ValidationReport;

/** Writes a validation report as comma-separated values (RFC 4180), a row for each value. */
public final class ValidationCsv {
    private static final List<String> TITLES = List.of("table", "id", "subject", "published", "computed", "tolerance",
            "result", "source", "mark", "version", "rule set", "revision", "sha256", "date");

    private ValidationCsv() {
    }

    /**
     * Writes a report.
     *
     * @throws IOException if the target fails
     */
    public static void write(ValidationReport report, Appendable out) throws IOException {
        CSVPrinter printer = new CSVPrinter(out, CSVFormat.RFC4180);
        printer.printRecord(TITLES);
        List<String> closing = closing(report.head());
        for (CheckResult result : report.results()) {
            List<String> row = new ArrayList<>(List.of(result.table(), result.id(), CellText.text(result.subject()),
                    result.expected(), result.computed(), result.tolerance(), result.passed() ? "passed" : "FAILED",
                    CellText.text(result.source()), result.mark()));
            row.addAll(closing);
            printer.printRecord(row);
        }
        printer.flush();
    }

    private static List<String> closing(ReportHead head) {
        return List.of(head.version(), CellText.text(head.rules().map(RuleFile::title).orElse("")),
                CellText.text(head.rules().map(RuleFile::revision).orElse("")),
                head.rules().map(RuleFile::sha256).orElse(""),
                head.date().toString());
    }
}
