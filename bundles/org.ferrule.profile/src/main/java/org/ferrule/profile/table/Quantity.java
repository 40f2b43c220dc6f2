/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.table;

/** What a row of the table of differences is about. */
public enum Quantity {
    /** The outer diameter at the distal tip. */
    ENTRY_PROFILE,
    /** The largest outer diameter of the sections with a crossing profile: a folded balloon, a crimped stent. */
    CROSSING_PROFILE,
    /** The largest outer diameter of the whole shaft, and where it begins, from the tip. */
    LARGEST_PROFILE,
    /** The largest room that shaft and own wire take where the wire lies beside the shaft. */
    LARGEST_WITH_WIRE,
    /** The length that can be inserted. */
    EFFECTIVE_LENGTH,
    /** The length over which the wire runs inside: from the tip to the exit port. */
    EXIT_PORT,
    /** The longest section that cannot bend. */
    LONGEST_RIGID,
    /** The smallest inner diameter of the lumen that others, or its wire, run in. */
    NARROWEST_LUMEN,
    /** What a wire leaves of that lumen: the clearance. */
    LEFT_BESIDE_WIRE,
    /** Where the bending stiffness steps by more than a factor of three. */
    STIFFNESS_STEPS
}
