/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit.field;

import org.ferrule.model.check.Severity;
import org.ferrule.quantity.QuantitySyntaxException;
import org.ferrule.quantity.QuantityWarning;
import org.ferrule.ui.problem.FoundProblem;

/**
 * What is wrong with a text in a field.
 *
 * @param severity how grave it is
 * @param message what it is
 * @param text the text, if a part of it can be pointed at; else empty
 * @param start the index where the part begins
 * @param end the index after the part
 */
record InputProblem(Severity severity, String message, String text, int start, int end) {

    static InputProblem of(FoundProblem problem) {
        return new InputProblem(problem.severity(), problem.message(), "", 0, 0);
    }

    static InputProblem of(QuantitySyntaxException problem) {
        int start = Math.min(problem.position(), problem.text().length());
        return new InputProblem(Severity.ERROR, "expected " + problem.expected(), problem.text(), start,
                endOfWord(problem.text(), start));
    }

    static InputProblem of(QuantityWarning warning, String text) {
        return new InputProblem(Severity.WARNING, warning.message(), text, warning.start(), warning.end());
    }

    private static int endOfWord(String text, int start) {
        int end = start;
        while (end < text.length() && (end == start || Character.isLetterOrDigit(text.charAt(end)))) {
            end++;
        }
        return end;
    }
}
