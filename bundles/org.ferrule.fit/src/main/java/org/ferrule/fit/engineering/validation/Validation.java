/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.validation;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.ferrule.fit.rules.RuleSet;

/** Computes every published value that ships with the program, and compares. */
public final class Validation {
    private static final String FIGURES = "typical-figures";
    private static final String SIZES = "which-size-takes-which";
    private static final Map<String, TableCheck> CHECKS = checks();

    private Validation() {
    }

    private static Map<String, TableCheck> checks() {
        Map<String, TableCheck> checks = new LinkedHashMap<>();
        checks.put("units", new UnitTable());
        checks.put("enclosing-circles", new CircleTable());
        checks.put("rigid-in-bend", new BendTable());
        checks.put("tolerance-factors", StatisticsTables::oneSided);
        checks.put("two-sided-tolerance-factors", StatisticsTables::twoSided);
        checks.put("sample-sizes", StatisticsTables::zeroFailures);
        checks.put("interference", StatisticsTables::interference);
        checks.put("tolerance-stacks", new StackTable());
        checks.put("passages", new PassageTable());
        return Collections.unmodifiableMap(checks);
    }

    /** The names of all tables that a run needs. */
    public static List<String> tables() {
        List<String> tables = new ArrayList<>(CHECKS.keySet());
        tables.addAll(List.of(SIZES, FIGURES));
        return tables;
    }

    /**
     * Runs all checks. A check that breaks off is one that failed, with the message as what was computed.
     *
     * @param tables the rows of each of {@link #tables()}
     * @param rules a rule set that is checked against the facts of the trade as well; absent for none
     */
    public static ValidationReport run(ReportHead head, Map<String, List<CheckRow>> tables, Optional<RuleSet> rules) {
        List<CheckResult> results = new ArrayList<>();
        CHECKS.forEach((table, check) -> add(results, rows(tables, table), check));
        List<CheckRow> figures = rows(tables, FIGURES);
        add(results, rows(tables, SIZES), SizeTable.exact(figures));
        rules.ifPresent(r -> add(results, rows(tables, SIZES), SizeTable.under(r, figures)));
        return new ValidationReport(head, results);
    }

    private static List<CheckRow> rows(Map<String, List<CheckRow>> tables, String table) {
        List<CheckRow> rows = tables.getOrDefault(table, List.of());
        if (rows.isEmpty()) {
            throw new IllegalArgumentException("there are no check values \"" + table + "\"");
        }
        return rows;
    }

    private static void add(List<CheckResult> results, List<CheckRow> rows, TableCheck check) {
        for (CheckRow row : rows) {
            result(row, check).ifPresent(results::add);
        }
    }

    private static Optional<CheckResult> result(CheckRow row, TableCheck check) {
        try {
            return check.check(row);
        } catch (RuntimeException e) {
            return Optional.of(CheckResult.of(row, "row " + row.number(),
                    new Comparison("a result", String.valueOf(e.getMessage()), "", false)));
        }
    }
}
