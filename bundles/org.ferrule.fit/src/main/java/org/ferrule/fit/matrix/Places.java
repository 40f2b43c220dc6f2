/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.matrix;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

import org.ferrule.fit.passage.ReadDevice;

/** Where the lines, or the columns, of a matrix stood in the former one, and which of them are what they were. */
final class Places {
    private final int[] former;
    private final boolean[] same;
    private final boolean[] sameNames;
    private final int[] touched;

    private Places(int[] former, boolean[] same, boolean[] sameNames) {
        this.former = former;
        this.same = same;
        this.sameNames = sameNames;
        this.touched = IntStream.range(0, same.length).filter(i -> !same[i]).toArray();
    }

    /** Tells lines or columns apart; devices of several libraries may share an id, so they are numbered too. */
    private record Key(String id, String lumen, int number) {
    }

    /** What the lines and the columns of a matrix have in common for this. */
    private interface Kind<T> {
        Key key(T one);

        boolean same(T one, T other);

        List<String> names(T one);
    }

    private static final Kind<MatrixLine> LINE = new Kind<>() {
        @Override
        public Key key(MatrixLine line) {
            return new Key(line.device().device().id(), line.lumen().name(), 0);
        }

        @Override
        public boolean same(MatrixLine one, MatrixLine other) {
            return one.device() == other.device() && one.lumen().equals(other.lumen());
        }

        @Override
        public List<String> names(MatrixLine line) {
            return SectionNames.of(line);
        }
    };

    private static final Kind<ReadDevice> COLUMN = new Kind<>() {
        @Override
        public Key key(ReadDevice device) {
            return new Key(device.device().id(), "", 0);
        }

        @Override
        public boolean same(ReadDevice one, ReadDevice other) {
            return one == other;
        }

        @Override
        public List<String> names(ReadDevice device) {
            return SectionNames.of(device);
        }
    };

    /**
     * Finds lines again.
     *
     * @param mayBeSame whether the same question is asked of them
     */
    static Places ofLines(List<MatrixLine> now, List<MatrixLine> before, boolean mayBeSame) {
        return of(LINE, now, before, mayBeSame);
    }

    /**
     * Finds columns again.
     *
     * @param mayBeSame whether the same question is asked of them
     */
    static Places ofColumns(List<ReadDevice> now, List<ReadDevice> before, boolean mayBeSame) {
        return of(COLUMN, now, before, mayBeSame);
    }

    private static <T> Places of(Kind<T> kind, List<T> now, List<T> before, boolean mayBeSame) {
        int[] former = now == before || standStill(kind, now, before) ? IntStream.range(0, now.size()).toArray()
                : moved(keys(kind, now), keys(kind, before));
        boolean[] same = new boolean[former.length];
        boolean[] sameNames = new boolean[former.length];
        for (int i = 0; i < former.length; i++) {
            if (former[i] >= 0) {
                T was = before.get(former[i]);
                boolean untouched = now.get(i) == was || kind.same(now.get(i), was);
                same[i] = mayBeSame && untouched;
                sameNames[i] = untouched || kind.names(now.get(i)).equals(kind.names(was));
            }
        }
        return new Places(former, same, sameNames);
    }

    /** Whether each stands where it stood, which is usual and quickly seen. */
    private static <T> boolean standStill(Kind<T> kind, List<T> now, List<T> before) {
        if (now.size() != before.size()) {
            return false;
        }
        for (int i = 0; i < now.size(); i++) {
            T one = now.get(i);
            T other = before.get(i);
            if (one != other && !kind.same(one, other) && !kind.key(one).equals(kind.key(other))) {
                return false;
            }
        }
        return true;
    }

    private static <T> List<Key> keys(Kind<T> kind, List<T> all) {
        Map<Key, Integer> seen = new HashMap<>();
        return all.stream().map(kind::key)
                .map(key -> new Key(key.id(), key.lumen(), seen.merge(key, 1, Integer::sum))).toList();
    }

    private static int[] moved(List<Key> keys, List<Key> formerKeys) {
        Map<Key, Integer> indexes = new HashMap<>();
        for (Key key : formerKeys) {
            indexes.put(key, indexes.size());
        }
        return keys.stream().mapToInt(key -> indexes.getOrDefault(key, -1)).toArray();
    }

    /** The former index; -1 for one that is new. */
    int former(int index) {
        return former[index];
    }

    /** Whether it is the same as before, and the same is asked of it. */
    boolean same(int index) {
        return same[index];
    }

    /** Whether the names of its sections are what they were. */
    boolean sameNames(int index) {
        return sameNames[index];
    }

    /** How many there are. */
    int size() {
        return former.length;
    }

    /** Whether at least half of them are the same. */
    boolean areMostlySame() {
        return 2 * touched.length <= former.length;
    }

    /** Those that are not the same, in order. */
    int[] touched() {
        return touched.clone();
    }
}
