/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;

import org.ferrule.io.json.DocumentProblem;
import org.ferrule.model.check.Severity;

/** Problems of documents as lines that editors and people can follow: {@code file:line:column: severity: text}. */
public final class Problems {
    private Problems() {
    }

    /** One problem. */
    public static String line(Path file, DocumentProblem problem) {
        String severity = problem.severity().name().toLowerCase(java.util.Locale.ROOT);
        return file + ":" + problem.line() + ":" + problem.column() + ": " + severity + ": " + problem.text();
    }

    /** All problems of a severity. */
    public static String lines(Path file, List<DocumentProblem> problems, Severity severity) {
        return problems.stream().filter(p -> p.severity() == severity).map(p -> line(file, p))
                .collect(Collectors.joining(System.lineSeparator()));
    }
}
