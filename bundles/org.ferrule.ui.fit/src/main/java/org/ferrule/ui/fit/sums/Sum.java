/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.sums;

import java.util.List;
import java.util.Optional;

import org.ferrule.calc.Calculator;
import org.ferrule.calc.input.ArgumentException;
import org.ferrule.calc.input.Arguments;
import org.ferrule.calc.result.Calculation;

/**
 * A calculation as it was asked for, with its answer or with what stands in its way. Immutable.
 *
 * @param calculator the calculator
 * @param arguments what was given
 * @param answer the answer, if there is one
 * @param problem what has to be put right first, if there is no answer
 */
record Sum(Calculator calculator, Arguments arguments, Optional<Calculation> answer,
        Optional<ArgumentException> problem) {

    /** Calculates. */
    static Sum of(Calculator calculator, Arguments arguments) {
        try {
            return new Sum(calculator, arguments, Optional.of(calculator.calculate(arguments)), Optional.empty());
        } catch (ArgumentException e) {
            return new Sum(calculator, arguments, Optional.empty(), Optional.of(e));
        }
    }

    /** Returns what was given, in a line: the name of each parameter and its texts. */
    String given() {
        return calculator.parameters().stream().filter(arguments::has)
                .map(p -> p.name() + " " + String.join(", ", arguments.texts(p))).reduce((a, b) -> a + "; " + b)
                .orElse("");
    }

    /** Returns the values of a parameter that are of a type. */
    <T> List<T> all(String parameter, Class<T> type) {
        return calculator.parameters().stream().filter(p -> p.name().equals(parameter))
                .flatMap(p -> arguments.all(p).stream()).map(type::cast).toList();
    }
}
