/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.equipment;

/** Why a candidate was chosen before the next. */
public enum Choice {
    /** No other can be planned with. */
    ONLY_ONE,
    /** It fits; the next is only tight. */
    FITS_SURELY,
    /** It leaves the larger lumen for what comes later. */
    LARGER_LUMEN,
    /** Enough is left on the shelf; of the next there would be none. */
    NOT_THE_LAST,
    /** It passes with more clearance. */
    MORE_CLEARANCE,
    /** It expires first. */
    EXPIRES_FIRST,
    /** With those that are better by themselves, nothing could play a later role. */
    LATER_ROLES,
    /** It stands first in the library; all else is alike. */
    FIRST_IN_LIBRARY
}
