/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc;

import java.util.List;

import org.ferrule.calc.input.Arguments;
import org.ferrule.calc.input.Parameter;
import org.ferrule.calc.result.Calculation;

/** One named calculation. Has no state. */
public interface Calculator {

    /** Returns the word by which it is called, lower case, such as {@code bend}. */
    String name();

    /** Returns a heading of a few words. */
    String title();

    /** Returns what it is good for, in one sentence. */
    String purpose();

    /** Returns what it asks for, in the order in which it is best filled in. */
    List<Parameter<?>> parameters();

    /**
     * Calculates. "It does not fit" and "the table says nothing of it" are answers.
     *
     * @throws org.ferrule.calc.input.ArgumentException naming the parameter and the text, when arguments do not make
     *         sense together
     */
    Calculation calculate(Arguments arguments);
}
