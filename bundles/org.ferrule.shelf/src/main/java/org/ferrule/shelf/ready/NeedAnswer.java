/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.ready;

import java.util.List;

import org.ferrule.shelf.stock.Pick;

/**
 * How ready a need is.
 *
 * @param need the need
 * @param readiness how well it is covered
 * @param picks units to take, in order; fewer than needed where there are too few
 * @param reasons why, the most important first
 */
public record NeedAnswer(Need need, Readiness readiness, List<Pick> picks, List<Reason> reasons) {

    /** Copies the lists. */
    public NeedAnswer {
        picks = List.copyOf(picks);
        reasons = List.copyOf(reasons);
    }

    /** Returns how many units are picked. */
    public int picked() {
        return picks.stream().mapToInt(Pick::count).sum();
    }
}
