/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a day as ISO 8601 writes it. */
public final class DayConverter implements ITypeConverter<LocalDate> {
    @Override
    public LocalDate convert(String value) {
        try {
            return LocalDate.parse(value);
        } catch (DateTimeParseException e) {
            throw new TypeConversionException("\"" + value + "\" is no day; write it such as 2026-04-02");
        }
    }
}
