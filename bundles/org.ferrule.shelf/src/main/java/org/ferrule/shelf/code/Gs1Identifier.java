/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.code;

import java.util.Arrays;
import java.util.Optional;

/** The application identifiers that are read, with the formats of the GS1 General Specifications, section 3. */
enum Gs1Identifier {
    GTIN("01", Content.GTIN, 14, 14),
    CONTAINED_GTIN("02", Content.GTIN, 14, 14),
    LOT("10", Content.TEXT, 1, 20),
    MADE("11", Content.DATE, 6, 6),
    BEST_BEFORE("15", Content.DATE, 6, 6),
    EXPIRY("17", Content.DATE, 6, 6),
    VARIANT("20", Content.DIGITS, 2, 2),
    SERIAL("21", Content.TEXT, 1, 20),
    CONSUMER_VARIANT("22", Content.TEXT, 1, 20),
    COUNT("30", Content.DIGITS, 1, 8),
    CONTAINED_COUNT("37", Content.DIGITS, 1, 8),
    ADDITIONAL("240", Content.TEXT, 1, 30),
    CUSTOMER_PART("241", Content.TEXT, 1, 30),
    SECOND_SERIAL("250", Content.TEXT, 1, 30),
    NATIONAL_0("710", Content.TEXT, 1, 20),
    NATIONAL_1("711", Content.TEXT, 1, 20),
    NATIONAL_2("712", Content.TEXT, 1, 20),
    NATIONAL_3("713", Content.TEXT, 1, 20),
    NATIONAL_4("714", Content.TEXT, 1, 20),
    NATIONAL_5("715", Content.TEXT, 1, 20),
    NATIONAL_6("716", Content.TEXT, 1, 20);

    /** What a value may hold. */
    enum Content {
        GTIN, DATE, DIGITS, TEXT
    }

    /** The invariant part of ISO/IEC 646 without the blank: 82 characters. */
    private static final String CHARACTERS = "!\"%&'()*+,-./0123456789:;<=>?ABCDEFGHIJKLMNOPQRSTUVWXYZ_"
            + "abcdefghijklmnopqrstuvwxyz";

    private final String digits;
    private final Content content;
    private final int least;
    private final int most;

    Gs1Identifier(String digits, Content content, int least, int most) {
        this.digits = digits;
        this.content = content;
        this.least = least;
        this.most = most;
    }

    /** Returns the identifier that a text goes on with; none starts with another. */
    static Optional<Gs1Identifier> at(CodeText text, int at) {
        return Arrays.stream(values()).filter(identifier -> text.startsWith(identifier.digits, at)).findFirst();
    }

    String digits() {
        return digits;
    }

    /** Whether values have a length that all readers know, so that no separator is needed behind them. */
    boolean isFixed() {
        return least == most;
    }

    int most() {
        return most;
    }

    /** Fails unless the value between two places has the right length, characters and check digit. */
    void check(CodeText text, int from, int to) throws CodeException {
        for (int i = from; i < to; i++) {
            if (content == Content.TEXT ? CHARACTERS.indexOf(text.at(i)) < 0 : !Digits.is(text.at(i))) {
                throw text.fault(CodeFault.CHARACTER, i, allowed());
            }
        }
        if (to - from < least || to - from > most) {
            throw text.fault(CodeFault.LENGTH, Math.min(to, from + most), lengths());
        }
        if (content == Content.GTIN) {
            Gtin.read(text, from, to);
        }
    }

    boolean isDate() {
        return content == Content.DATE;
    }

    private String allowed() {
        return (content == Content.TEXT ? "a letter, digit or one of !\"%&'()*+,-./:;<=>?_" : "a digit") + " in ("
                + digits + ")";
    }

    private String lengths() {
        return (isFixed() ? "" : least + " to ") + most + " characters in (" + digits + ")";
    }
}
