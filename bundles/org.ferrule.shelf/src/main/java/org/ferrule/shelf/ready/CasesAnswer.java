/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.ready;

import java.util.List;

import org.ferrule.shelf.stock.Shelf;

/**
 * How ready several cases are that share one shelf.
 *
 * @param cases answers in the order in which the cases were given
 * @param contentions items that are wanted by more needs than they suffice for
 * @param left the shelf when all that was picked is gone
 */
public record CasesAnswer(List<CaseAnswer> cases, List<Contention> contentions, Shelf left) {

    /** Copies the lists. */
    public CasesAnswer {
        cases = List.copyOf(cases);
        contentions = List.copyOf(contentions);
    }
}
