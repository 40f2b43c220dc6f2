/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.purchase;

import java.util.List;

import org.ferrule.shelf.ready.Need;

/**
 * A rung of a ladder: a technique that can be tried if all it needs is there.
 *
 * @param id id in its case
 * @param axis the axis it is on, such as support or modification
 * @param needs what it needs; preferred items and substitutes serve alike
 */
public record Rung(String id, String axis, List<Need> needs) {

    /** Copies the list. */
    public Rung {
        needs = List.copyOf(needs);
    }
}
