/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.matrix;

/** Work ended without a result because nobody waits for it any more. */
public class SolveCancelledException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public SolveCancelledException() {
        super("solving was cancelled");
    }
}
