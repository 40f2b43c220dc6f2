/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.opinion;

/** A question has no second opinion; the message says why. */
public class NotComparableException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public NotComparableException(String message) {
        super(message);
    }
}
