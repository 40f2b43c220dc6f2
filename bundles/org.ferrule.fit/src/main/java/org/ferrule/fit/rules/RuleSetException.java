/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.rules;

/** A rule set does not say what a question needs. The message names what is missing. */
public class RuleSetException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public RuleSetException(String message) {
        super(message);
    }
}
