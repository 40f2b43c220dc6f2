/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit.field;

import java.util.Optional;

import org.ferrule.model.check.Severity;

/**
 * What came of reading a text.
 *
 * @param value the value; null if the text is empty or cannot be read
 * @param problem what is wrong or doubtful, if anything
 */
record Reading(Object value, Optional<InputProblem> problem) {

    /** An empty text leaves the feature unstated. */
    static final Reading EMPTY = new Reading(null, Optional.empty());

    static Reading of(Object value) {
        return new Reading(value, Optional.empty());
    }

    static Reading unreadable(InputProblem problem) {
        return new Reading(null, Optional.of(problem));
    }

    /** Tells whether the text may become part of the document. */
    boolean readable() {
        return problem.map(InputProblem::severity).filter(severity -> severity == Severity.ERROR).isEmpty();
    }
}
