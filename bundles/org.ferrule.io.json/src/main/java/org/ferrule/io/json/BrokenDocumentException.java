/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.json;

import java.io.IOException;
import java.util.List;
import java.util.stream.Collectors;

/** A document cannot be opened: its text is not JSON, or contradicts its format. */
public class BrokenDocumentException extends IOException {

    private static final long serialVersionUID = 1L;

    private final transient List<DocumentProblem> problems;

    /** Creates an exception whose message names every problem with its line and column. */
    public BrokenDocumentException(List<DocumentProblem> problems) {
        super(problems.stream().map(p -> p.line() + ":" + p.column() + ": " + p.text())
                .collect(Collectors.joining("\n")));
        this.problems = List.copyOf(problems);
    }

    /** Returns the problems. */
    public List<DocumentProblem> problems() {
        return problems;
    }
}
