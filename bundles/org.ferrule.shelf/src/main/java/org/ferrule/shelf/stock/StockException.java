/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.stock;

import java.util.List;

/** Something was taken from a shelf, or put there, that does not agree with what lies there. */
public class StockException extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient List<String> contradictions;

    /**
     * Takes the contradictions.
     *
     * @param contradictions one sentence each, naming item and lot; at least one
     */
    public StockException(List<String> contradictions) {
        super(String.join("; ", contradictions));
        this.contradictions = List.copyOf(contradictions);
    }

    /** Returns the contradictions one by one. */
    public List<String> contradictions() {
        return contradictions;
    }
}
