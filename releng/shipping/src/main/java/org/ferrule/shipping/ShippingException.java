/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.shipping;

/** Something in the product cannot be shipped as it is; the message names the file. */
class ShippingException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    ShippingException(String message) {
        super(message);
    }
}
