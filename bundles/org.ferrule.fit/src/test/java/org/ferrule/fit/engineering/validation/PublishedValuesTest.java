/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.validation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;

/** The published values of the folder {@code shared}, each with its source. */
class PublishedValuesTest {

    @Test
    void everyPublishedValueIsMet() {
        ValidationReport report = Validation.run(
                new ReportHead("0.1.0", Optional.empty(), LocalDate.of(2026, 11, 26)), CheckTables.shared(),
                Optional.empty());
        assertEquals(List.of(), report.failures());
        assertTrue(report.results().size() > 180, "values: " + report.results().size());
        for (CheckResult result : report.results()) {
            assertFalse(result.source().isBlank() || result.mark().isBlank() || result.subject().isBlank(),
                    result.toString());
        }
    }
}
