/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.validation;

/**
 * One published value and what the program makes of it.
 *
 * @param table where the value stands
 * @param id of the row
 * @param subject what was asked
 * @param expected the published value
 * @param computed what the program gives, or why it gives nothing
 * @param tolerance how far both may differ, in words or in the unit of the value
 * @param source who published it
 * @param mark how sure that is: seen, computed, from memory, common practice
 * @param passed whether both agree
 */
public record CheckResult(String table, String id, String subject, String expected, String computed, String tolerance,
        String source, String mark, boolean passed) {

    static CheckResult of(CheckRow row, String subject, Comparison comparison) {
        return new CheckResult(row.table(), row.id(), subject, comparison.expected(), comparison.computed(),
                comparison.tolerance(), row.get("source"), row.get("mark"), comparison.passed());
    }
}
