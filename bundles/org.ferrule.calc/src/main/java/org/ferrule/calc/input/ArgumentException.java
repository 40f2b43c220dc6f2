/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.input;

import java.util.Optional;

/** An argument that cannot be used. */
public class ArgumentException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final String parameter;
    private final String text;
    private final String problem;

    private ArgumentException(String parameter, String text, String problem) {
        super(parameter + (text == null ? "" : " \"" + text + "\"") + ": " + problem);
        this.parameter = parameter;
        this.text = text;
        this.problem = problem;
    }

    /** A text that cannot be used, with the reason in words. */
    public static ArgumentException of(String parameter, String text, String problem) {
        return new ArgumentException(parameter, text, problem);
    }

    /** A parameter that is not there or should not be, with the reason in words. */
    public static ArgumentException of(String parameter, String problem) {
        return new ArgumentException(parameter, null, problem);
    }

    /** Returns the name of the parameter. */
    public String parameter() {
        return parameter;
    }

    /** Returns the text that was given, if one was. */
    public Optional<String> text() {
        return Optional.ofNullable(text);
    }

    /** Returns the reason in words. */
    public String problem() {
        return problem;
    }
}
