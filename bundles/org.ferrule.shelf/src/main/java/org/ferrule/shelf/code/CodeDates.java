/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.code;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Year;
import java.time.YearMonth;

/** Dates in codes. Years of two digits lie from 49 years before today's to 50 after it. */
final class CodeDates {
    private static final int CENTURY = 100;

    private final LocalDate today;

    CodeDates(LocalDate today) {
        this.today = today;
    }

    /**
     * The year meant by two digits: where they are 51 or more above those of today's year, in the century before; where
     * 50 or more below, in the next (GS1 General Specifications, section 7.12, from memory).
     */
    int year(int twoDigits) {
        int century = today.getYear() / CENTURY * CENTURY;
        int ahead = twoDigits - today.getYear() % CENTURY;
        if (ahead >= 51) {
            return century - CENTURY + twoDigits;
        }
        return ahead <= -50 ? century + CENTURY + twoDigits : century + twoDigits;
    }

    /** Reads a date in a pattern of Y, M, D and J (day of the year); without D, or D 00, it is the month's last day. */
    LocalDate read(CodeText text, int from, String pattern) throws CodeException {
        if (from + pattern.length() > text.length()) {
            throw text.fault(CodeFault.LENGTH, text.length(), "a date " + pattern);
        }
        Digits.check(text, from, from + pattern.length());
        String digits = text.part(from, from + pattern.length());
        int years = number(digits, pattern, 'Y');
        int year = pattern.contains("YYYY") ? years : year(years);
        try {
            return pattern.contains("J") ? Year.of(year).atDay(number(digits, pattern, 'J'))
                    : date(YearMonth.of(year, number(digits, pattern, 'M')), number(digits, pattern, 'D'));
        } catch (DateTimeException e) {
            throw text.fault(CodeFault.DATE, from, "a date " + pattern + " that the calendar has, not " + digits);
        }
    }

    private static LocalDate date(YearMonth month, int day) {
        return day == 0 ? month.atEndOfMonth() : month.atDay(day);
    }

    private static int number(String digits, String pattern, char part) {
        int number = 0;
        for (int i = 0; i < pattern.length(); i++) {
            number = pattern.charAt(i) == part ? 10 * number + digits.charAt(i) - '0' : number;
        }
        return number;
    }
}
