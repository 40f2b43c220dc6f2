/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.extension;

/** A plug-in does not bring what it announces. */
public class ExtensionException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public ExtensionException(String message, Throwable cause) {
        super(message, cause);
    }
}
