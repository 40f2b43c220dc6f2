/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.matrix;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * Where the lines, or the columns, of a matrix have their words: those that are answered alike share a slot. The slots of
 * a matrix that is solved again stay where they were, but for those of what has changed. Immutable.
 *
 * @param <K> what tells lines, or columns, apart
 */
final class Slots<K> {
    private static final int NONE = -1;

    private final int[] slots;
    /** By slot; null for a free one. */
    private final List<K> keys;
    /** By slot: how many have it, and the first of them. */
    private final int[] counts;
    private final int[] standing;
    /** Slots whose words are not known yet. */
    private final BitSet fresh;

    private Slots(int[] slots, List<K> keys, BitSet fresh) {
        this.slots = slots;
        this.keys = keys;
        this.fresh = fresh;
        this.counts = new int[keys.size()];
        this.standing = new int[keys.size()];
        Arrays.fill(standing, NONE);
        for (int index = slots.length - 1; index >= 0; index--) {
            counts[slots[index]]++;
            standing[slots[index]] = index;
        }
    }

    /** No slots for nothing. */
    static Slots<Object> none() {
        return new Slots<>(new int[0], List.of(), new BitSet());
    }

    /** Slots for all of them, in an order; all are fresh. */
    static <K> Slots<K> of(List<K> all, Comparator<K> order) {
        List<K> keys = all.stream().distinct().sorted(order).toList();
        Map<K, Integer> places = new HashMap<>();
        keys.forEach(key -> places.put(key, places.size()));
        BitSet fresh = new BitSet();
        fresh.set(0, keys.size());
        return new Slots<>(all.stream().mapToInt(places::get).toArray(), keys, fresh);
    }

    /**
     * The slots after a change. What has changed gets the slot of its likes, else a free or a new one, which is fresh.
     *
     * @param touched what tells those apart that are not the same as before, by index
     */
    Slots<K> next(Places places, IntFunction<K> touched) {
        int[] next = new int[places.size()];
        List<K> kept = new ArrayList<>(Collections.nCopies(keys.size(), null));
        for (int i = 0; i < next.length; i++) {
            if (places.same(i)) {
                next[i] = slots[places.former(i)];
                kept.set(next[i], keys.get(next[i]));
            }
        }
        BitSet filled = new BitSet();
        for (int i : places.touched()) {
            next[i] = place(touched.apply(i), kept, filled);
        }
        return new Slots<>(next, kept, filled);
    }

    private static <K> int place(K key, List<K> kept, BitSet filled) {
        int likes = kept.indexOf(key);
        if (likes >= 0) {
            return likes;
        }
        int free = kept.indexOf(null);
        int slot = free >= 0 ? free : kept.size();
        if (free >= 0) {
            kept.set(free, key);
        } else {
            kept.add(key);
        }
        filled.set(slot);
        return slot;
    }

    /** How many lines, or columns, there are. */
    int size() {
        return slots.length;
    }

    /** How many slots there are, free ones too. */
    int count() {
        return keys.size();
    }

    /** The slot of a line, or a column. */
    int slot(int index) {
        return slots[index];
    }

    /** How many have a slot. */
    int users(int slot) {
        return counts[slot];
    }

    /** The index of one that has a slot; -1 where it is free. */
    int standing(int slot) {
        return standing[slot];
    }

    /** What has a slot; absent where it is free. */
    Optional<K> key(int slot) {
        return Optional.ofNullable(keys.get(slot));
    }

    /** Whether most slots are free, so that it is time to start anew. */
    boolean isSparse() {
        return 2 * Arrays.stream(counts).filter(n -> n == 0).count() > counts.length;
    }

    /** Whether every slot is fresh. */
    boolean isNew() {
        return freshCount() == count();
    }

    /** How many slots are fresh. */
    int freshCount() {
        return fresh.cardinality();
    }

    /** The fresh slots. */
    IntStream freshSlots() {
        return fresh.stream();
    }

    boolean isFresh(int slot) {
        return fresh.get(slot);
    }

    /** Whether any fresh slot has a key of a kind. */
    boolean anyFresh(Predicate<K> kind) {
        return fresh.stream().anyMatch(slot -> kind.test(keys.get(slot)));
    }

    /** The slots of a tile. */
    int[] slotsOf(int tile) {
        return IntStream.range(tile * CellGrid.SIDE, Math.min(count(), (tile + 1) * CellGrid.SIDE)).toArray();
    }

    /** The fresh slots of a tile. */
    int[] freshOf(int tile) {
        return IntStream.of(slotsOf(tile)).filter(fresh::get).toArray();
    }
}
