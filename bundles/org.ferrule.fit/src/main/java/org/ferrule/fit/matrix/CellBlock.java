/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.matrix;

import java.util.stream.IntStream;

import org.ferrule.fit.quick.QuickBlock;
import org.ferrule.fit.quick.QuickOuter;

/**
 * Columns of a tile side by side, and what each adds to the word of a cell where the whole device passes: such a word is
 * a sum of what the lumen says and what the device says. Immutable.
 */
final class CellBlock {
    private final QuickBlock quick;
    private final int[] slots;
    private final long[] parts;
    private final boolean isRow;
    private final int mostName;
    private final int leastHigh;
    private final int mostHigh;
    private final int leastSpread;
    private final int mostSpread;

    /**
     * A block.
     *
     * @param quick the devices
     * @param slots theirs, in order, all of one tile
     */
    CellBlock(QuickBlock quick, int[] slots) {
        this.quick = quick;
        this.slots = slots.clone();
        this.parts = all().mapToLong(i -> CellWord.ofDevice(quick.sectionName(i), quick.high(i), quick.centre(i)))
                .toArray();
        this.isRow = all().allMatch(i -> slots[i] % CellGrid.SIDE == i);
        this.mostName = all().map(quick::sectionName).max().orElse(0);
        this.leastHigh = all().map(quick::high).min().orElse(0);
        this.mostHigh = all().map(quick::high).max().orElse(0);
        this.leastSpread = all().map(i -> quick.high(i) - quick.centre(i)).min().orElse(0);
        this.mostSpread = all().map(i -> quick.high(i) - quick.centre(i)).max().orElse(0);
    }

    private IntStream all() {
        return IntStream.range(0, slots.length);
    }

    QuickBlock quick() {
        return quick;
    }

    int size() {
        return slots.length;
    }

    int slot(int i) {
        return slots[i];
    }

    /** The place of a column within its line of a tile. */
    int within(int i) {
        return slots[i] & CellGrid.SIDE - 1;
    }

    /** Whether words can tell the clearances of all devices in a lumen that they pass. */
    boolean holds(QuickOuter outer) {
        long spread = outer.centre() - outer.low();
        long least = outer.low() - mostHigh;
        long most = outer.low() - leastHigh;
        return CellWord.holds(outer.sectionName(), mostName, least, least + spread + leastSpread)
                && CellWord.holds(outer.sectionName(), mostName, most, most + spread + mostSpread);
    }

    /** Puts in the words of devices that pass a lumen with the same marks. */
    void fill(int marks, QuickOuter outer, long[] words, int at) {
        long lumen = CellWord.ofLumen(marks, outer.sectionName(), outer.low(), outer.centre());
        if (isRow) {
            for (int i = 0; i < parts.length; i++) {
                words[at + i] = lumen + parts[i];
            }
        } else {
            for (int i = 0; i < parts.length; i++) {
                words[at + within(i)] = lumen + parts[i];
            }
        }
    }
}
