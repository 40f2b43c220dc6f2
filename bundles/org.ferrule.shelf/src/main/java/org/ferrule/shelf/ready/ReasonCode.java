/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.ready;

/** Why a need is as ready as it is; the arguments stand behind each code. */
public enum ReasonCode {
    /** No item is named: (). */
    NO_ITEM,
    /** An item is not on the shelf: (item). */
    NOT_ON_SHELF,
    /** Of all items together too few may be used: (usable, wanted). */
    NOT_ENOUGH,
    /** Units expire before the day of the case: (item, lot, expiry, number of units). */
    EXPIRES_BEFORE,
    /** An earlier need has taken units that could be used here: (item, number of units, case, need). */
    TAKEN_EARLIER,
    /** Units of a second choice are taken: (item, number of units). */
    SECOND_CHOICE,
    /** No other usable unit of these items is left afterwards: (). */
    LAST_UNITS,
    /**
     * Units are taken that expire on the very day: (item, lot, expiry). They count as usable, which is common practice;
     * the label goes first.
     */
    EXPIRES_THAT_DAY,
    /** Units are taken of which no expiry is known: (item, lot). */
    NO_EXPIRY
}
