/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.json;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.ferrule.model.check.Severity;

/** Collects what is found while a text is read. */
final class Problems {

    private final SourceText text;
    private final List<DocumentProblem> found = new ArrayList<>();

    Problems(SourceText text) {
        this.text = text;
    }

    /** Somewhere in the text. */
    void add(Severity severity, FormatCode code, int start, int end, String message, String expected) {
        add(severity, code, text.region(start, end), message, expected, "");
    }

    /** At a value. */
    void add(Severity severity, FormatCode code, JsonNode node, String message, String expected) {
        add(severity, code, text.region(node), message, expected, "");
    }

    /** At a value that could be replaced by a suggestion, given as JSON; empty if there is none. */
    void add(Severity severity, FormatCode code, TextRegion region, String message, String expected,
            String suggestion) {
        found.add(new DocumentProblem(severity, code.name(), message, expected, suggestion, region, Optional.empty(),
                Optional.empty()));
    }

    void add(DocumentProblem problem) {
        found.add(problem);
    }

    boolean hasErrors() {
        return found.stream().anyMatch(problem -> problem.severity() == Severity.ERROR);
    }

    /** Returns everything, in the order of the text. */
    List<DocumentProblem> inOrder() {
        return found.stream().sorted(Comparator.comparingInt(problem -> problem.region().offset())).toList();
    }
}
