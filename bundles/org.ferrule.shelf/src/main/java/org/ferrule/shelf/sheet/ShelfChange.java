/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.sheet;

import java.util.Objects;

/**
 * One thing that another shelf would change.
 *
 * @param item id of the item
 * @param kind what happens
 * @param what which part of the item; empty where it is the item itself
 * @param was what it is now, in words; empty where nothing is there
 * @param is what it would be; empty where nothing would be there
 */
public record ShelfChange(String item, Kind kind, String what, String was, String is) {

    /** What happens. */
    public enum Kind {
        /** Comes to what is there. */
        ADDED,
        /** Is there, and would be otherwise. */
        CHANGED,
        /** Would not be there any more. */
        REMOVED
    }

    public ShelfChange {
        Objects.requireNonNull(item, "item");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(what, "what");
        Objects.requireNonNull(was, "was");
        Objects.requireNonNull(is, "is");
    }
}
