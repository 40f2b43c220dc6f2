/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.sheet;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Period;
import java.time.YearMonth;
import java.util.Optional;

import org.ferrule.model.Source;

/** How old the source of a device is on a day. */
public final class SourceAge {

    private static final int YEAR = 4;
    private static final int MONTH = 7;

    private final LocalDate today;

    /** Creates ages as of a day. */
    public SourceAge(LocalDate today) {
        this.today = today;
    }

    /** Returns the date of a row's source; of a year or a month alone its last day, so that no source looks older. */
    public Optional<LocalDate> date(SheetRow row) {
        return row.source().map(Source::getDate).flatMap(SourceAge::read);
    }

    private static Optional<LocalDate> read(String text) {
        try {
            return switch (text.length()) {
                case YEAR -> Optional.of(LocalDate.of(Integer.parseInt(text), 12, 31));
                case MONTH -> Optional.of(YearMonth.parse(text).atEndOfMonth());
                default -> Optional.of(LocalDate.parse(text));
            };
        } catch (DateTimeException | NumberFormatException e) {
            // the check of dates says what is wrong with it
            return Optional.empty();
        }
    }

    /** Returns the age in words, such as {@code 2 y 3 mo}; empty if the source has no date. */
    public String words(SheetRow row) {
        return date(row).map(this::words).orElse("");
    }

    private String words(LocalDate date) {
        Period age = Period.between(date.isAfter(today) ? today : date, today);
        String months = age.getMonths() + " mo";
        return age.getYears() == 0 ? months : age.getYears() + " y" + (age.getMonths() == 0 ? "" : " " + months);
    }

    /** Tells whether the source has a date, and is more than so many years old. */
    public boolean olderThan(SheetRow row, int years) {
        return date(row).filter(date -> date.isBefore(today.minusYears(years))).isPresent();
    }
}
