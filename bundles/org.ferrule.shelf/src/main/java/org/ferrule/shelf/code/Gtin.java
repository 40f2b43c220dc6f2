/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.code;

/**
 * Check digits of GTINs: weights 3 and 1 by turns from the right, up to the next ten (GS1 General Specifications,
 * section 7.9, and the check digit calculator of gs1.org).
 */
public final class Gtin {
    /** Digits of a GTIN when it is written in full. */
    public static final int DIGITS = 14;

    private Gtin() {
    }

    /**
     * Returns the check digit that belongs behind some digits.
     *
     * @param digits the digits without the check digit, at least one
     * @return 0 to 9
     * @throws IllegalArgumentException naming the text if something else than digits is in it
     */
    public static int checkDigit(String digits) {
        if (!Digits.areAll(digits)) {
            throw new IllegalArgumentException("not digits: \"" + digits + "\"");
        }
        int sum = 0;
        for (int i = 0; i < digits.length(); i++) {
            sum += (digits.charAt(digits.length() - 1 - i) - '0') * (i % 2 == 0 ? 3 : 1);
        }
        return (10 - sum % 10) % 10;
    }

    /** Returns the GTIN of 14 digits that stands at a place where there are digits only, zeros added in front. */
    static String read(CodeText text, int from, int to) throws CodeException {
        int expected = checkDigit(text.part(from, to - 1));
        if (text.at(to - 1) - '0' != expected) {
            throw text.fault(CodeFault.CHECK, to - 1, "check digit " + expected);
        }
        return "0".repeat(DIGITS - (to - from)) + text.part(from, to);
    }
}
