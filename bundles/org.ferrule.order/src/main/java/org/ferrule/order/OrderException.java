/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.order;

/** A problem that cannot be asked; the message names the values. */
public class OrderException extends IllegalArgumentException {
    private static final long serialVersionUID = 1;

    /** @param message what is wrong, with the values */
    public OrderException(String message) {
        super(message);
    }
}
