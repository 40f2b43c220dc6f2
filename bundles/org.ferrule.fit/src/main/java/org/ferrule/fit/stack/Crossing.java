/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.stack;

import java.util.Objects;

import org.ferrule.fit.passage.FitAnswer;
import org.ferrule.fit.passage.FitQuestion;

/**
 * One question that a stack asks: a device of a level in what it has to pass.
 *
 * @param question with all that lies there already
 * @param answer going in and coming out
 */
public record Crossing(FitQuestion question, FitAnswer answer) {

    public Crossing {
        Objects.requireNonNull(question, "question");
        Objects.requireNonNull(answer, "answer");
    }
}
