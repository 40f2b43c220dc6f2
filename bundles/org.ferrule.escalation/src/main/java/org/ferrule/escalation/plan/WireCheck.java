/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.plan;

/**
 * What must be seen before the first rung, always: the wire in the distal true lumen, in two orthogonal views. It cannot
 * be turned off; a case can only state what was seen.
 */
public enum WireCheck {
    /** Someone stated that it was seen. */
    STATED,
    /** Nobody stated it: it is the first thing to do. */
    TO_BE_SEEN,
    /** Someone stated that it is not so: nothing is planned. */
    DENIED;

    /** Id of the fact by which a case states it. */
    public static final String FACT = "true-lumen";
}
