/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.input;

/** The form of a value, from which a field for it can be chosen. */
public enum Form {
    /** A length or diameter with its unit. */
    LENGTH,
    /** A length that may be below zero. */
    SIGNED_LENGTH,
    /** A length with its tolerance, and a sign that tells whether it adds. */
    TOLERANCED_LENGTH,
    /** A pressure with its unit. */
    PRESSURE,
    /** A row of a table of pressures and diameters. */
    TABLE_ROW,
    /** An angle with its unit. */
    ANGLE,
    /** A number, with or without the one unit that it is in. */
    NUMBER,
    /** A number with one of several units. */
    QUANTITY,
    /** A whole number. */
    COUNT,
    /** A share between 0 and 1, or in percent. */
    SHARE,
    /** A cost and one or more chances. */
    TRIES,
    /** One of several words. */
    CHOICE,
    /** A length or a pressure, or a size that cannot be converted. */
    MEASURE
}
