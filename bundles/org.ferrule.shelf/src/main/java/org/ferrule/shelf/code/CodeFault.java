/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.code;

/** What is wrong with a code. */
public enum CodeFault {
    /** There is nothing to read. */
    EMPTY,
    /** The text is of neither scheme, or its symbology prefix does not go with it. */
    NO_CODE,
    /** A character that cannot stand there. */
    CHARACTER,
    /** A value is too short or too long. */
    LENGTH,
    /** A value is longer than it may be; probably the group separator behind it is missing. */
    SEPARATOR,
    /** An identifier that is not known, so that nobody can say what follows. */
    IDENTIFIER,
    /** A check digit or check character does not agree with the rest. */
    CHECK,
    /** A date that the calendar has not. */
    DATE,
    /** Something is said twice. */
    DUPLICATE,
    /** The text can be read in two ways. */
    AMBIGUOUS,
    /** Two codes are not of the same box. */
    LINK
}
