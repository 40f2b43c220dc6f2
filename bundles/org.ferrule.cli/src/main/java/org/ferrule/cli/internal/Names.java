/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.util.Locale;

/** Names of constants and kinds as JSON writes them: small letters with blanks between words. */
final class Names {
    private Names() {
    }

    /** Of a constant, such as "fits surely" for FITS_SURELY. */
    static String word(String constant) {
        return constant.toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** Of the kind of a value, such as "does not pass" for DoesNotPass. */
    static String kind(Object value) {
        return value.getClass().getSimpleName().replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
    }
}
