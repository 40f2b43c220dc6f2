/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.technique;

import java.util.List;
import java.util.Set;

/** What a technique and a set-up have in common. */
public sealed interface Move permits Setup, Technique {

    /** Unique in its ladder. */
    String id();

    /** In words. */
    String name();

    /** How much harm it can do. */
    Hazard hazard();

    /** Who is needed. */
    List<Role> roles();

    /** What must hold. */
    List<Need> needs();

    /** Ids of the set-ups that must be in place. */
    Set<String> setups();

    /** What else must be known. */
    Advice advice();
}
