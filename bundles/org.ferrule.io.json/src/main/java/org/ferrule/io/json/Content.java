/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.json;

import java.util.Optional;

import org.ferrule.model.Document;
import org.ferrule.model.check.ModelProblem;
import org.ferrule.model.check.Validation;

/** Checks the content of a document that was read, and finds the places of what is wrong with it. */
final class Content {

    private final Positions positions;

    Content(Positions positions) {
        this.positions = positions;
    }

    void check(Document document, Problems problems) {
        new Validation().check(document).forEach(problem -> problems.add(located(problem)));
    }

    private DocumentProblem located(ModelProblem problem) {
        return new DocumentProblem(problem.severity(), problem.code().name(), problem.message(), "", "",
                place(problem), Optional.of(problem.subject()), Optional.ofNullable(problem.feature()));
    }

    private TextRegion place(ModelProblem problem) {
        Optional<TextRegion> exact = Optional.empty();
        if (problem.part() != null) {
            exact = positions.within(problem.subject(), problem.feature(), problem.part().start(),
                    problem.part().end());
        } else if (problem.index() != ModelProblem.WHOLE) {
            exact = positions.value(problem.subject(), problem.feature(), problem.index());
        }
        return exact.orElseGet(() -> positions.closest(problem.subject(), problem.feature()));
    }
}
