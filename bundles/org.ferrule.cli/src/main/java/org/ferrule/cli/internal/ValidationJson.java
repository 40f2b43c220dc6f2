/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import org.ferrule.fit.engineering.validation.CheckResult;
import org.ferrule.fit.engineering.validation.ReportHead.RuleFile;
import org.ferrule.fit.engineering.validation.ValidationReport;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** A validation report as JSON. */
public final class ValidationJson {
    private ValidationJson() {
    }

    /** The report. */
    public static ObjectNode of(ValidationReport report) {
        ObjectNode node = JsonNodeFactory.instance.objectNode().put("version", report.head().version()).put("date",
                report.head().date().toString());
        node.set("rules", report.head().rules().map(ValidationJson::rules).orElse(null));
        node.put("values", report.results().size()).put("notMet", report.failures().size());
        ArrayNode results = node.putArray("results");
        report.results().forEach(r -> results.add(result(r)));
        return node;
    }

    private static ObjectNode rules(RuleFile rules) {
        return JsonNodeFactory.instance.objectNode().put("title", rules.title()).put("revision", rules.revision())
                .put("sha256", rules.sha256());
    }

    private static ObjectNode result(CheckResult result) {
        return JsonNodeFactory.instance.objectNode().put("table", result.table()).put("id", result.id())
                .put("subject", result.subject()).put("published", result.expected())
                .put("computed", result.computed()).put("tolerance", result.tolerance())
                .put("source", result.source()).put("mark", result.mark()).put("passed", result.passed());
    }
}
