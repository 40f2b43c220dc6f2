/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.size;

/** A chance cannot be told; the message says why. */
public class NoChanceException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public NoChanceException(String message) {
        super(message);
    }
}
