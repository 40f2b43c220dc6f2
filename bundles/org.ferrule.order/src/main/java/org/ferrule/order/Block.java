/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.order;

import java.util.ArrayList;
import java.util.List;

/**
 * Steps that are taken one after the other, seen as one step.
 *
 * @param cost expected cost of the block, once it is begun
 * @param chance that one of its steps succeeds
 */
record Block(double cost, double chance) {

    double ratio() {
        return chance == 0 ? Double.POSITIVE_INFINITY : cost / chance;
    }

    /** This block, and the other if this one fails. */
    Block then(Block next) {
        return new Block(cost + (1 - chance) * next.cost, chance + (1 - chance) * next.chance);
    }

    /**
     * Joins blocks that must be taken in this order to blocks of rising ratio: a block that is better than the one before
     * it belongs to it. See docs/ordering.md, 3.
     */
    static List<Block> rising(List<Block> chain) {
        List<Block> joined = new ArrayList<>();
        for (Block block : chain) {
            Block last = block;
            while (!joined.isEmpty() && last.ratio() < joined.get(joined.size() - 1).ratio()) {
                last = joined.remove(joined.size() - 1).then(last);
            }
            joined.add(last);
        }
        return joined;
    }

    /** One list of rising ratio from two. */
    static List<Block> merged(List<Block> first, List<Block> second) {
        List<Block> all = new ArrayList<>(first.size() + second.size());
        int i = 0;
        for (Block block : second) {
            while (i < first.size() && first.get(i).ratio() <= block.ratio()) {
                all.add(first.get(i++));
            }
            all.add(block);
        }
        all.addAll(first.subList(i, first.size()));
        return all;
    }
}
