/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.sheet;

import java.util.Comparator;
import java.util.Locale;

import org.ferrule.quantity.Length;

/**
 * What a cell is sorted by: a text, a length or a number; all cells of a column have the same.
 *
 * @param text the text in lower case, or null
 * @param length the length, or null
 * @param number the number; 0 if there is none
 */
record SortKey(String text, Length length, long number) implements Comparable<SortKey> {

    private static final Comparator<SortKey> ORDER = Comparator
            .comparing(SortKey::text, Comparator.nullsLast(Comparator.naturalOrder()))
            .thenComparing(SortKey::length, Comparator.nullsLast(Comparator.naturalOrder()))
            .thenComparingLong(SortKey::number);

    /** Returns the key of a text; null for an empty one. */
    static SortKey of(String text) {
        return text.isEmpty() ? null : new SortKey(text.toLowerCase(Locale.ROOT), null, 0);
    }

    /** Returns the key of a length; null for none. */
    static SortKey of(Length length) {
        return length == null ? null : new SortKey(null, length, 0);
    }

    static SortKey of(long number) {
        return new SortKey(null, null, number);
    }

    @Override
    public int compareTo(SortKey other) {
        return ORDER.compare(this, other);
    }
}
