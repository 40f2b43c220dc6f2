/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.validation;

import java.util.List;
import java.util.Objects;

/**
 * What a version makes of every published value.
 *
 * @param head version, rule set and date
 * @param results in the order of the tables
 */
public record ValidationReport(ReportHead head, List<CheckResult> results) {

    public ValidationReport {
        Objects.requireNonNull(head, "head");
        results = List.copyOf(results);
    }

    /** The values that are not met. */
    public List<CheckResult> failures() {
        return results.stream().filter(r -> !r.passed()).toList();
    }

    /** The names of the tables in order. */
    public List<String> tables() {
        return results.stream().map(CheckResult::table).distinct().toList();
    }

    /** The results of one table. */
    public List<CheckResult> of(String table) {
        return results.stream().filter(r -> r.table().equals(table)).toList();
    }
}
