/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.matrix;

import java.util.stream.IntStream;

import org.ferrule.fit.quick.QuickBlock;
import org.ferrule.fit.quick.QuickOuter;

/**
 * What each device of a block adds to the word of a cell when the same kind of place decides for all: such a word is a sum
 * of what the lumen says and what the device says. Immutable.
 */
final class CellParts {
    private final boolean atTip;
    private final long[] parts;
    private final int mostName;
    private final int leastHigh;
    private final int mostHigh;
    private final int leastSpread;
    private final int mostSpread;

    /**
     * Parts.
     *
     * @param atTip whether the tip decides at the entry of the lumen, and not the widest place at the narrowest
     */
    CellParts(QuickBlock block, boolean atTip) {
        int[] name = block.sectionName(atTip);
        int[] high = block.high(atTip);
        int[] centre = block.centre(atTip);
        int[] spread = IntStream.range(0, high.length).map(i -> high[i] - centre[i]).toArray();
        this.atTip = atTip;
        this.parts = IntStream.range(0, high.length).mapToLong(i -> CellWord.ofDevice(name[i], high[i], centre[i]))
                .toArray();
        this.mostName = IntStream.of(name).max().orElse(0);
        this.leastHigh = IntStream.of(high).min().orElse(0);
        this.mostHigh = IntStream.of(high).max().orElse(0);
        this.leastSpread = IntStream.of(spread).min().orElse(0);
        this.mostSpread = IntStream.of(spread).max().orElse(0);
    }

    /** Whether words can tell the clearances of all devices in a lumen. */
    boolean hold(QuickOuter outer) {
        int name = outer.sectionName(atTip);
        long low = outer.low(atTip);
        long spread = outer.centre(atTip) - low;
        return CellWord.holds(name, mostName, low - mostHigh, low - mostHigh + spread + leastSpread)
                && CellWord.holds(name, mostName, low - leastHigh, low - leastHigh + spread + mostSpread);
    }

    /** Puts in words one after the other. */
    void fill(int marks, QuickOuter outer, long[] words, int at) {
        long lumen = ofLumen(marks, outer);
        for (int i = 0; i < parts.length; i++) {
            words[at + i] = lumen + parts[i];
        }
    }

    /** Puts in words at places of their own. */
    void fill(int marks, QuickOuter outer, long[] words, int at, int[] within) {
        long lumen = ofLumen(marks, outer);
        for (int i = 0; i < parts.length; i++) {
            words[at + within[i]] = lumen + parts[i];
        }
    }

    private long ofLumen(int marks, QuickOuter outer) {
        return CellWord.ofLumen(marks, outer.sectionName(atTip), outer.low(atTip), outer.centre(atTip));
    }
}
