/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.validation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.ferrule.fit.rules.RuleSet;
import org.ferrule.fit.sample.TestRules;
import org.junit.jupiter.api.Test;

/** A report tells of each value whether it is met, and holds a rule set against the facts of the trade. */
class ValidationTest {
    private static final ReportHead HEAD = new ReportHead("0.1.0", Optional.empty(), LocalDate.of(2026, 11, 26));

    /** Slow tables are kept short: how they are computed does not depend on the rule set. */
    private static Map<String, List<CheckRow>> shortTables() {
        Map<String, List<CheckRow>> tables = CheckTables.shared();
        tables.replaceAll((table, rows) -> table.contains("factors") || table.contains("circles") ? rows.subList(0, 1)
                : rows);
        return tables;
    }

    private static ValidationReport report(RuleSet rules) {
        return Validation.run(HEAD, shortTables(), Optional.of(rules));
    }

    @Test
    void aRuleSetIsCheckedAgainstTheFactsOfTheTrade() {
        ValidationReport report = report(TestRules.usual().rules());
        assertEquals(List.of(), report.failures());
        assertEquals(2 * 43, report.of("which-size-takes-which").size(), "each fact once more under the rule set");
    }

    @Test
    void tightIsCarefulAndNoContradiction() {
        RuleSet careful = TestRules.exact().spans("0 mm", "2 mm").rules();
        ValidationReport report = report(careful);
        assertEquals(List.of(), report.failures());
        assertTrue(
                report.results().stream().anyMatch(r -> r.computed().equals("tight") && r.expected().equals("fits")));
    }

    @Test
    void aRuleSetWithoutSpansFails() {
        List<CheckResult> failures = report(TestRules.silent().required("0 mm").rules()).failures();
        assertFalse(failures.isEmpty());
        assertTrue(failures.get(0).computed().contains("has no span"), failures.get(0).computed());
    }

    @Test
    void aValueThatIsNotMetFailsWithBothFigures() {
        Map<String, List<CheckRow>> tables = shortTables();
        for (String table : List.of("units", "enclosing-circles", "rigid-in-bend", "tolerance-factors",
                "two-sided-tolerance-factors", "sample-sizes", "interference", "tolerance-stacks", "passages",
                "which-size-takes-which")) {
            tables.compute(table, (name, rows) -> spoiled(rows));
        }
        List<CheckResult> failures = Validation.run(HEAD, tables, Optional.empty()).failures();
        assertEquals(10, failures.stream().map(CheckResult::table).distinct().count());
        failures.forEach(f -> assertFalse(f.expected().equals(f.computed()), f.toString()));
    }

    /** The first row with another published value. */
    private static List<CheckRow> spoiled(List<CheckRow> rows) {
        Map<String, String> fields = new HashMap<>(rows.get(0).fields());
        for (String column : List.of("expected", "enclosingRadius", "expectedMm", "factor", "n", "probability",
                "nominal", "clearanceMm")) {
            fields.computeIfPresent(column, (c, text) -> text.equals("fits") ? "blocked" : "7.25");
        }
        fields.computeIfPresent("coverage", (c, text) -> fields.containsKey("factor") ? "0.95" : text);
        List<CheckRow> spoiled = new ArrayList<>(rows);
        spoiled.set(0, new CheckRow(rows.get(0).table(), 1, fields));
        return spoiled;
    }

    @Test
    void refusesToRunWithoutATable() {
        Map<String, List<CheckRow>> tables = shortTables();
        tables.remove("units");
        Exception refused = assertThrows(IllegalArgumentException.class,
                () -> Validation.run(HEAD, tables, Optional.empty()));
        assertTrue(refused.getMessage().contains("units"));
    }

    @Test
    void everyTableIsToldOfWithWhatWasComputed() {
        ValidationReport report = report(TestRules.usual().rules());
        for (String table : Validation.tables()) {
            assertEquals(table.equals("typical-figures"), report.of(table).isEmpty(), table);
            report.of(table).forEach(result -> assertFalse(result.subject().isBlank() || result.computed().isBlank(),
                    result.toString()));
        }
    }
}
