/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.record;

import java.util.Arrays;

/** Shares out the room of a table: what is narrow keeps its width, and what is wide wraps at one and the same width. */
final class ColumnWidths {

    private ColumnWidths() {
    }

    /**
     * Returns the widths in pixels, whose sum is at most the room.
     *
     * @param natural the width of each column without wrapping
     * @param room what there is for all, gaps left out
     */
    static int[] of(int[] natural, int room) {
        int widest = widest(natural, room);
        return Arrays.stream(natural).map(width -> Math.min(width, widest)).toArray();
    }

    private static int widest(int[] natural, int room) {
        int[] rising = Arrays.stream(natural).sorted().toArray();
        int left = room;
        for (int i = 0; i < rising.length; i++) {
            int share = Math.max(1, left / (rising.length - i));
            if (rising[i] > share) {
                return share;
            }
            left -= rising[i];
        }
        return Integer.MAX_VALUE;
    }
}
