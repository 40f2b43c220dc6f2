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
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.junit.jupiter.api.Test;

/** When a computed value agrees with a published one, and what a report tells of it. */
class ComparisonTest {

    @Test
    void agreesUpToTheLastPrintedDigit() {
        assertTrue(Comparison.toLastDigit("1.23", 1.2349).passed());
        assertTrue(Comparison.toLastDigit("1.23", 1.2251).passed());
        assertTrue(Comparison.toLastDigit("1.23", 1.235).passed(), "rounded either way");
        assertFalse(Comparison.toLastDigit("1.23", 1.2351).passed());
        assertFalse(Comparison.toLastDigit("1.23", 1.2249).passed());
        assertFalse(Comparison.toLastDigit("1.230", 1.2349).passed());
    }

    @Test
    void aRoundingOfTheMethodIsAllowedOnTop() {
        assertTrue(Comparison.within("1.23", 1.244, 0.01).passed());
        assertFalse(Comparison.within("1.23", 1.246, 0.01).passed());
        assertEquals("±0.015", Comparison.within("1.23", 1.23, 0.01).tolerance());
        assertEquals("1.25", Comparison.within("1.23", 1.25, 0.01).computed());
    }

    @Test
    void twoAgreeWhereBothDo() {
        Comparison same = Comparison.same("fits", "fits");
        Comparison other = Comparison.same("fits", "tight");
        assertTrue(same.and(same).passed());
        assertFalse(same.and(other).passed());
        assertFalse(other.and(same).passed());
        assertEquals("fits; tight", same.and(other).computed());
    }

    @Test
    void aRowIsCalledByItsIdOrItsNumberAndMissesNoColumnSilently() {
        assertEquals("7", new CheckRow("units", 7, Map.of()).id());
        assertEquals("u1", new CheckRow("units", 7, Map.of("id", "u1")).id());
        String message = assertThrows(IllegalArgumentException.class,
                () -> new CheckRow("units", 7, Map.of()).get("expected")).getMessage();
        assertTrue(message.contains("units") && message.contains("expected"), message);
    }

    @Test
    void aReportTellsTableByTable() {
        CheckResult met = result("units", true);
        CheckResult missed = result("passages", false);
        ValidationReport report = new ValidationReport(
                new ReportHead("0.1.0", Optional.empty(), LocalDate.of(2026, 11, 26)), List.of(met, missed, met));
        assertEquals(List.of("units", "passages"), report.tables());
        assertEquals(List.of(met, met), report.of("units"));
        assertEquals(List.of(missed), report.failures());
    }

    private static CheckResult result(String table, boolean passed) {
        return new CheckResult(table, "1", "a value", "1", "1", "exact", "a source", "C", passed);
    }
}
