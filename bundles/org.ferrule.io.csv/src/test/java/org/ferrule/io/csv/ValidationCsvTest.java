/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.ferrule.fit.engineering.validation.CheckResult;
import org.ferrule.fit.engineering.validation.ReportHead;
import org.ferrule.fit.engineering.validation.ReportHead.RuleFile;
import org.ferrule.fit.engineering.validation.Validation;
import org.ferrule.fit.engineering.validation.ValidationReport;
import org.junit.jupiter.api.Test;

class ValidationCsvTest {

    @Test
    void theJarBringsEveryTable() {
        assertEquals(Validation.tables(), List.copyOf(PublishedValues.tables().keySet()));
        PublishedValues.tables().forEach((table, rows) -> assertTrue(!rows.isEmpty(), table));
    }

    @Test
    void writesARowForEachValueWithVersionRulesAndDate() throws IOException {
        ReportHead head = new ReportHead("0.1.0", Optional.of(new RuleFile("House rules", "4", "ab12")),
                LocalDate.of(2026, 11, 26));
        ValidationReport report = new ValidationReport(head,
                List.of(new CheckResult("units", "U1", "=1 Fr", "0.3", "0.31", "exact", "UCUM, 2.2", "seen", false)));
        StringBuilder out = new StringBuilder();
        ValidationCsv.write(report, out);
        assertEquals("table,id,subject,published,computed,tolerance,result,source,mark,version,rule set,revision,"
                + "sha256,date\r\n"
                + "units,U1,'=1 Fr,0.3,0.31,exact,FAILED,\"UCUM, 2.2\",seen,0.1.0,House rules,4,ab12,2026-11-26\r\n",
                out.toString());
    }
}
