/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.code;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.Set;

/** Element strings of GS1, raw as a scanner sends them or as they are printed, with brackets. */
final class Gs1Reader {
    private static final String IDENTIFIERS = "an application identifier: 01, 02, 10, 11, 15, 17, 20, 21, 22, 30, 37, "
            + "240, 241, 250 or 710 to 716";

    private final CodeText text;
    private final CodeDates dates;
    private final CodeParts parts = new CodeParts();
    private final Set<Gs1Identifier> seen = EnumSet.noneOf(Gs1Identifier.class);

    private Gs1Reader(CodeText text, LocalDate today) {
        this.text = text;
        dates = new CodeDates(today);
    }

    /** Reads identifiers and values one after another; values without a known length end at a group separator. */
    static ProductCode raw(CodeText given, LocalDate today) throws CodeException {
        Gs1Reader reader = new Gs1Reader(given.withSeparators(), today);
        int at = reader.behindSeparator(0);
        do {
            at = reader.behindSeparator(reader.rawElement(at));
        } while (at < reader.text.length());
        return reader.parts.code(Scheme.GS1);
    }

    /** Reads identifiers in brackets; a value ends before the next bracket that holds nothing but digits. */
    static ProductCode printed(CodeText given, LocalDate today) throws CodeException {
        Gs1Reader reader = new Gs1Reader(given, today);
        int at = 0;
        do {
            at = reader.printedElement(at);
        } while (at < given.length());
        return reader.parts.code(Scheme.GS1);
    }

    private int behindSeparator(int at) {
        return at < text.length() && text.at(at) == CodeText.SEPARATOR ? at + 1 : at;
    }

    private int rawElement(int at) throws CodeException {
        Gs1Identifier identifier = identifier(at);
        int from = at + identifier.digits().length();
        int separator = text.indexOf(CodeText.SEPARATOR, from);
        int to = identifier.isFixed() ? Math.min(separator, from + identifier.most()) : separator;
        if (to - from > identifier.most()) {
            throw text.fault(CodeFault.SEPARATOR, from + identifier.most(), "a group separator, since ("
                    + identifier.digits() + ") has at most " + identifier.most() + " characters");
        }
        add(identifier, at, from, to);
        return to;
    }

    private int printedElement(int at) throws CodeException {
        if (text.at(at) != '(') {
            throw text.fault(CodeFault.CHARACTER, at, "an opening bracket");
        }
        Gs1Identifier identifier = identifier(at + 1);
        int from = at + 1 + identifier.digits().length();
        if (!text.startsWith(")", from)) {
            throw text.fault(CodeFault.IDENTIFIER, at + 1, IDENTIFIERS);
        }
        int next = nextBracket(from + 1);
        int start = from + 1;
        int end = next;
        while (start < end && text.at(start) == ' ') {
            start++;
        }
        while (end > start && text.at(end - 1) == ' ') {
            end--;
        }
        add(identifier, at, start, end);
        return next;
    }

    private int nextBracket(int from) {
        int at = text.indexOf('(', from);
        while (at < text.length()) {
            int closing = text.indexOf(')', at);
            if (closing < text.length() && closing - at >= 3 && closing - at <= 5
                    && Digits.areAll(text.part(at + 1, closing))) {
                return at;
            }
            at = text.indexOf('(', at + 1);
        }
        return at;
    }

    private Gs1Identifier identifier(int at) throws CodeException {
        return Gs1Identifier.at(text, at).orElseThrow(() -> text.fault(CodeFault.IDENTIFIER, at, IDENTIFIERS));
    }

    private void add(Gs1Identifier identifier, int at, int from, int to) throws CodeException {
        if (!seen.add(identifier)) {
            throw text.fault(CodeFault.DUPLICATE, at, "(" + identifier.digits() + ") once only");
        }
        identifier.check(text, from, to);
        LocalDate date = identifier.isDate() ? dates.read(text, from, "YYMMDD") : null;
        String value = text.part(from, to);
        switch (identifier) {
            case GTIN -> parts.di.set(value, text, at);
            case LOT -> parts.lot.set(value, text, at);
            case SERIAL -> parts.serial.set(value, text, at);
            case COUNT -> parts.quantity.set(Integer.valueOf(value), text, at);
            case EXPIRY -> parts.expiry.set(date, text, at);
            case MADE -> parts.made.set(date, text, at);
            default -> parts.other(identifier.digits(), value);
        }
    }
}
