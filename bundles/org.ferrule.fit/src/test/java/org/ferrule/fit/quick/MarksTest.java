/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.quick;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Set;

import org.junit.jupiter.api.Test;

/** What is put together in ten bits comes apart again. */
class MarksTest {

    @Test
    void verdictsAndAuthoritiesOfBothPhasesComeApart() {
        Set<Integer> all = new HashSet<>();
        for (int in = 0; in < Marks.PHASE; in++) {
            for (int out = 0; out < Marks.PHASE; out++) {
                for (boolean caution : new boolean[] { false, true }) {
                    int marks = Marks.of(in & 3, in >> 2, out & 3, out >> 2, !caution, caution);
                    assertEquals(in, Marks.in(marks));
                    assertEquals(out, Marks.out(marks));
                    assertEquals(!caution, Marks.hasConflict(marks));
                    assertEquals(caution, Marks.hasCaution(marks));
                    all.add(marks);
                }
            }
        }
        assertEquals(2 * Marks.PHASE * Marks.PHASE, all.size());
        assertTrue(all.stream().allMatch(marks -> marks >= 0 && marks < 1 << Marks.BITS));
    }

    @Test
    void nothingToWatchIsNoMark() {
        assertFalse(Marks.hasConflict(Marks.of(3, 2, 3, 2, false, false)));
        assertFalse(Marks.hasCaution(Marks.of(3, 2, 3, 2, false, false)));
        assertEquals(0, Marks.of(0, 0, 0, 0, false, false));
        assertEquals(3 + 2 * 4, Marks.phase(3, 2));
    }
}
