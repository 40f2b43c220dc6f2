/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.order;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Blocks of all chains, for any number of tries made before, in the order of their ratios. In arrays, as they are gone
 * through for each of hundreds of thousands of states.
 */
final class FreeBlocks {
    final int size;
    final int[] option;
    final double[] ratio;
    final double[] cost;
    final double[] chance;
    private final int[] tried;
    private final int[] needs;

    private record Entry(Relaxation.Chain chain, int tried, Block block) {
    }

    FreeBlocks(List<Relaxation.Chain> chains) {
        List<Entry> entries = new ArrayList<>();
        for (Relaxation.Chain chain : chains) {
            for (int k = 0; k < chain.from().size(); k++) {
                for (Block block : chain.from().get(k)) {
                    entries.add(new Entry(chain, k, block));
                }
            }
        }
        entries.sort(Comparator.comparingDouble(entry -> entry.block.ratio()));
        size = entries.size();
        option = entries.stream().mapToInt(entry -> entry.chain.option()).toArray();
        tried = entries.stream().mapToInt(Entry::tried).toArray();
        needs = entries.stream().mapToInt(entry -> entry.chain.needs()).toArray();
        ratio = entries.stream().mapToDouble(entry -> entry.block.ratio()).toArray();
        cost = entries.stream().mapToDouble(entry -> entry.block.cost()).toArray();
        chance = entries.stream().mapToDouble(entry -> entry.block.chance()).toArray();
    }

    /** Whether the block is one of those that lie ahead in a state, and waits for no event. */
    boolean isFree(int block, State state, int happened) {
        return state.tries[option[block]] == tried[block] && (needs[block] & ~happened) == 0;
    }
}
