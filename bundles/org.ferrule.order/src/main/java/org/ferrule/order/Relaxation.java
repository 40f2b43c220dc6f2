/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.order;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The best order where only needs count: no tiers, no rule about risks, no discount, no budget. It is found without a
 * search (docs/ordering.md has the proof), and its expected cost is a lower bound where there are such rules.
 * <p>
 * An event is a step that others wait for: a set-up, or the first try of an option that another is after. All other tries
 * wait for events alone. For each set of events that have happened there is one list of blocks, of rising ratio, of all
 * that waits for another event. Where there are more events than can be held, the rest is taken to have happened.
 */
final class Relaxation {
    private static final int MOST_EVENTS = 14;

    /** A step that others wait for. */
    private record Event(Block block, int needs) {
    }

    /** Tries that nothing else waits for, by the number of tries that were made before. */
    record Chain(int option, int needs, List<List<Block>> from) {
    }

    private final Model model;
    private final double[] factors;
    private final List<Event> events = new ArrayList<>();
    private final int[] setupEvent;
    private final int[] gateEvent;
    private final List<Chain> chains = new ArrayList<>();
    private final FreeBlocks free;
    private final Map<Integer, List<Block>> waiting = new HashMap<>();

    /**
     * @param level steps of higher tiers are left out
     * @param factors on the chances by option; none for none
     */
    Relaxation(Model model, int level, double[] factors) {
        this.model = model;
        this.factors = factors;
        setupEvent = new int[model.setups];
        gateEvent = new int[model.options];
        addEvents(level);
        for (int i = 0; i < model.options; i++) {
            if (model.level[i] <= level) {
                addChain(i);
            }
        }
        free = new FreeBlocks(chains);
    }

    private void addEvents(int level) {
        int next = 0;
        for (int i = 0; i < model.setups; i++) {
            setupEvent[i] = next < MOST_EVENTS ? next++ : -1;
        }
        for (int i = 0; i < model.options; i++) {
            gateEvent[i] = model.isGate(i) && next < MOST_EVENTS ? next++ : -1;
        }
        for (int i = 0; i < model.setups; i++) {
            if (setupEvent[i] >= 0) {
                events.add(new Event(new Block(model.setupCost[i], 0),
                        model.setupLevel[i] > level ? never(next) : eventsOf(model.setupNeeds[i], 0)));
            }
        }
        for (int i = 0; i < model.options; i++) {
            if (gateEvent[i] >= 0) {
                events.add(new Event(tryOf(i, 0),
                        model.level[i] > level ? never(next) : eventsOf(model.needs[i], model.after[i])));
            }
        }
    }

    /** A need that is never met, as no event has that number. */
    private static int never(int events) {
        return 1 << events;
    }

    private void addChain(int option) {
        int gate = gateEvent[option];
        int tries = model.cost[option].length;
        List<List<Block>> from = new ArrayList<>();
        for (int k = 0; k < tries; k++) {
            List<Block> rest = new ArrayList<>();
            for (int next = k; next < tries; next++) {
                rest.add(tryOf(option, next));
            }
            from.add(gate >= 0 && k == 0 ? List.of() : worthwhile(Block.rising(rest)));
        }
        chains.add(new Chain(option, gate >= 0 ? 1 << gate : eventsOf(model.needs[option], model.after[option]), from));
    }

    private List<Block> worthwhile(List<Block> blocks) {
        return blocks.stream().filter(block -> block.ratio() < model.stop).toList();
    }

    private Block tryOf(int option, int k) {
        return new Block(model.cost[option][k], model.chance[option][k] * (factors.length == 0 ? 1 : factors[option]));
    }

    private int eventsOf(long setups, long options) {
        int bits = 0;
        for (int i = 0; i < model.setups; i++) {
            bits |= (setups >> i & 1) != 0 && setupEvent[i] >= 0 ? 1 << setupEvent[i] : 0;
        }
        for (int i = 0; i < model.options; i++) {
            bits |= (options >> i & 1) != 0 && gateEvent[i] >= 0 ? 1 << gateEvent[i] : 0;
        }
        return bits;
    }

    /** Whether no event was taken to have happened. */
    boolean isComplete() {
        return model.setups + Long.bitCount(model.gates) <= MOST_EVENTS;
    }

    /** The least expected cost from that state on, stopping included. */
    double bound(State state) {
        int happened = happened(state);
        List<Block> later = waiting(happened);
        double cost = 0;
        double reach = 1;
        int i = 0;
        for (int entry = 0; entry < free.size; entry++) {
            if (!free.isFree(entry, state, happened)) {
                continue;
            }
            while (i < later.size() && later.get(i).ratio() <= free.ratio[entry]) {
                cost += reach * later.get(i).cost();
                reach *= 1 - later.get(i++).chance();
            }
            cost += reach * free.cost[entry];
            reach *= 1 - free.chance[entry];
        }
        for (; i < later.size(); i++) {
            cost += reach * later.get(i).cost();
            reach *= 1 - later.get(i).chance();
        }
        return cost + reach * model.stop;
    }

    /** The option of the best try that can be made and that nothing waits for; -1 if none is worth it. */
    int bestTry(State state) {
        int happened = happened(state);
        for (int entry = 0; entry < free.size; entry++) {
            if (free.isFree(entry, state, happened)) {
                return free.option[entry];
            }
        }
        return -1;
    }

    private int happened(State state) {
        return eventsOf(state.done, model.gates == 0 ? 0 : state.tried());
    }

    /** The blocks, best first, of all that waits for an event that has not happened. */
    private List<Block> waiting(int happened) {
        List<Block> known = waiting.get(happened);
        if (known == null) {
            known = findWaiting(happened);
            waiting.put(happened, known);
        }
        return known;
    }

    private List<Block> findWaiting(int happened) {
        List<Block> best = List.of();
        for (int e = 0; e < events.size(); e++) {
            int then = happened | 1 << e;
            if (then != happened && (events.get(e).needs & ~happened) == 0) {
                List<Block> order = startingWith(events.get(e).block,
                        Block.merged(freed(happened, then), waiting(then)));
                if (best.isEmpty() || !order.isEmpty() && order.get(0).ratio() < best.get(0).ratio()) {
                    best = order;
                }
            }
        }
        return best;
    }

    /** The tries that can be made since the last event. */
    private List<Block> freed(int before, int now) {
        List<Block> freed = List.of();
        for (Chain chain : chains) {
            if ((chain.needs & ~before) != 0 && (chain.needs & ~now) == 0) {
                int made = gateEvent[chain.option] >= 0 ? 1 : 0;
                freed = made < chain.from.size() ? Block.merged(freed, chain.from.get(made)) : freed;
            }
        }
        return freed;
    }

    /** The event takes with it what makes the two together better. */
    private List<Block> startingWith(Block event, List<Block> rest) {
        Block first = event;
        int taken = 0;
        while (taken < rest.size() && rest.get(taken).ratio() < first.ratio()) {
            first = first.then(rest.get(taken++));
        }
        if (first.ratio() >= model.stop) {
            return List.of();
        }
        List<Block> order = new ArrayList<>(rest.size() - taken + 1);
        order.add(first);
        order.addAll(rest.subList(taken, rest.size()));
        return order;
    }
}
