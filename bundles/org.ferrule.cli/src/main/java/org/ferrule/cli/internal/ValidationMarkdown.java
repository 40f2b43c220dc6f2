/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import org.ferrule.fit.engineering.validation.CheckResult;
import org.ferrule.fit.engineering.validation.ReportHead;
import org.ferrule.fit.engineering.validation.ValidationReport;

/** A validation report as Markdown. */
public final class ValidationMarkdown {
    private final StringBuilder text = new StringBuilder();

    private ValidationMarkdown() {
    }

    /** The report as a text. */
    public static String of(ValidationReport report) {
        ValidationMarkdown markdown = new ValidationMarkdown();
        markdown.write(report);
        return markdown.text.toString();
    }

    private void write(ValidationReport report) {
        line("# Validation report");
        line("");
        head(report.head());
        line("- Values: " + report.results().size() + ", of which " + report.failures().size() + " are not met");
        for (String table : report.tables()) {
            line("");
            line("## " + table);
            line("");
            row("id", "subject", "published", "computed", "tolerance", "source", "mark", "result");
            line("|---|---|---|---|---|---|---|---|");
            report.of(table).forEach(this::row);
        }
        line("");
        line("Not a medical device. Published values are met or not; instructions for use decide about devices.");
    }

    private void head(ReportHead head) {
        line("- Version: " + head.version());
        line("- Date: " + head.date());
        line("- Rule set: " + head.rules()
                .map(r -> r.title() + ", rev. " + r.revision() + ", SHA-256 " + r.sha256())
                .orElse("none; figures of passages are taken as exact"));
    }

    private void row(CheckResult r) {
        row(r.id(), r.subject(), r.expected(), r.computed(), r.tolerance(), r.source(), r.mark(),
                r.passed() ? "passed" : "**FAILED**");
    }

    private void row(String... cells) {
        text.append('|');
        for (String cell : cells) {
            text.append(' ').append(cell.replace("|", "\\|").replace('\n', ' ')).append(" |");
        }
        text.append('\n');
    }

    private void line(String line) {
        text.append(line).append('\n');
    }
}
