/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.order;

/**
 * A step of a plan: a set-up, or one try of an option.
 *
 * @param id of the set-up or of the option
 * @param attempt 0 for a set-up, else 1 for the first try of the option, 2 for the second
 * @param cost of the step, in the unit of the objective
 * @param chance that it succeeds if it is reached, with the discount of its axis; 0 for a set-up
 */
public record Step(String id, int attempt, double cost, double chance) {

    /** Returns whether it brings something in, rather than trying something. */
    public boolean isSetup() {
        return attempt == 0;
    }
}
