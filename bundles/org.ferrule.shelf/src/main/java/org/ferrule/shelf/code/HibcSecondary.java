/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.code;

import java.time.LocalDate;

/**
 * The secondary part of an HIBC code: lot or serial number, expiry and quantity, in the forms of ANSI/HIBC 2.6, section
 * 2.2.2, and the supplementary data that may follow behind slashes (section 2.3); both from memory.
 */
final class HibcSecondary {
    private static final int LONGEST = 18;
    private static final String FORMS = "$, $+, $$, $$+ or a date YYJJJ";

    /** Dates behind $$ by the digit that announces them; the month and year have none. */
    private static final String[] DATES = { "MMYY", "MMYY", "MMDDYY", "YYMMDD", "YYMMDD", "YYJJJ", "YYJJJ" };
    private static final int NO_DATE = 7;

    private final CodeText text;
    private final CodeParts parts;
    private final CodeDates dates;

    HibcSecondary(CodeText text, CodeParts parts, CodeDates dates) {
        this.text = text;
        this.parts = parts;
        this.dates = dates;
    }

    /** Reads what stands between two places, piece by piece between slashes. */
    void readAll(int from, int to) throws CodeException {
        piece(from, Math.min(text.indexOf('/', from), to));
        int at = Math.min(text.indexOf('/', from), to);
        while (at < to) {
            int end = Math.min(text.indexOf('/', at + 1), to);
            supplement(at + 1, end);
            at = end;
        }
    }

    private void supplement(int from, int to) throws CodeException {
        if (starts("16D", from, to)) {
            parts.made.set(date(from + 3, to, "YYYYMMDD"), text, from);
            nothingBehind(from + 11, to);
        } else if (starts("14D", from, to)) {
            parts.expiry.set(date(from + 3, to, "YYYYMMDD"), text, from);
            nothingBehind(from + 11, to);
        } else if (starts("S", from, to)) {
            number(parts.serial, from + 1, to);
        } else if (starts("Q", from, to)) {
            quantity(from + 1, to, to);
        } else if (starts("$", from, to)) {
            piece(from, to);
        } else {
            throw text.fault(CodeFault.IDENTIFIER, from, "16D, 14D, S, Q or $ behind the slash");
        }
    }

    private void piece(int from, int to) throws CodeException {
        if (starts("$$+", from, to)) {
            dated(parts.serial, from + 3, to);
        } else if (starts("$$8", from, to)) {
            counted(from + 3, from + 5, to);
        } else if (starts("$$9", from, to)) {
            counted(from + 3, from + 8, to);
        } else if (starts("$$", from, to)) {
            dated(parts.lot, from + 2, to);
        } else if (starts("$+", from, to)) {
            number(parts.serial, from + 2, to);
        } else if (starts("$", from, to)) {
            number(parts.lot, from + 1, to);
        } else if (from < to && Digits.is(text.at(from))) {
            parts.expiry.set(date(from, to, "YYJJJ"), text, from);
            numberIfAny(parts.lot, from + 5, to);
        } else {
            throw text.fault(CodeFault.IDENTIFIER, from, FORMS);
        }
    }

    /** A quantity, and what may follow it: nothing, or a date and lot. */
    private void counted(int from, int digitsEnd, int to) throws CodeException {
        quantity(from, digitsEnd, to);
        if (digitsEnd < to) {
            dated(parts.lot, digitsEnd, to);
        }
    }

    /** A date as its first digit announces, if any, and a lot or serial number. */
    private void dated(CodeParts.Once<String> number, int from, int to) throws CodeException {
        if (from >= to || text.at(from) < '0' || text.at(from) > '0' + NO_DATE) {
            throw text.fault(CodeFault.IDENTIFIER, from, "a month and year, or a digit from 2 to 7 for the date");
        }
        int form = text.at(from) - '0';
        if (form == NO_DATE) {
            number(number, from + 1, to);
            return;
        }
        int start = form < 2 ? from : from + 1;
        int end = start + DATES[form].length();
        parts.expiry.set(date(start, to, DATES[form]), text, start);
        numberIfAny(number, form == 4 || form == 6 ? hour(end, to) : end, to);
    }

    private int hour(int from, int to) throws CodeException {
        if (from + 2 > to) {
            throw text.fault(CodeFault.LENGTH, to, "an hour of two digits");
        }
        Digits.check(text, from, from + 2);
        if (Integer.parseInt(text.part(from, from + 2)) > 23) {
            throw text.fault(CodeFault.DATE, from, "an hour from 00 to 23");
        }
        parts.other("expiryHour", text.part(from, from + 2));
        return from + 2;
    }

    private LocalDate date(int from, int to, String pattern) throws CodeException {
        return dates.read(text.between(0, to), from, pattern);
    }

    private void quantity(int from, int digitsEnd, int to) throws CodeException {
        if (digitsEnd > to || digitsEnd <= from || digitsEnd - from > 9) {
            throw text.fault(CodeFault.LENGTH, Math.min(digitsEnd, to), "a quantity: 2 digits behind $$8, "
                    + "5 behind $$9, 1 to 9 behind Q");
        }
        Digits.check(text, from, digitsEnd);
        parts.quantity.set(Integer.valueOf(text.part(from, digitsEnd)), text, from);
    }

    private void numberIfAny(CodeParts.Once<String> number, int from, int to) throws CodeException {
        if (from < to) {
            number(number, from, to);
        }
    }

    private void number(CodeParts.Once<String> number, int from, int to) throws CodeException {
        for (int i = from; i < to; i++) {
            if (!Character.isLetterOrDigit(text.at(i)) && text.at(i) != '-' && text.at(i) != '.') {
                throw text.fault(CodeFault.CHARACTER, i, "a letter, digit, dash or dot in a lot or serial number");
            }
        }
        if (from >= to || to - from > LONGEST) {
            throw text.fault(CodeFault.LENGTH, Math.min(to, from + LONGEST), "a lot or serial number of 1 to 18 "
                    + "characters");
        }
        number.set(text.part(from, to), text, from);
    }

    private void nothingBehind(int from, int to) throws CodeException {
        if (from < to) {
            throw text.fault(CodeFault.LENGTH, from, "nothing behind the date");
        }
    }

    private boolean starts(String start, int from, int to) {
        return from + start.length() <= to && text.startsWith(start, from);
    }
}
