/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.matrix;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The cells that are not what they were in the matrix that was solved before, by line, then by column. They are looked
 * up when they are asked for; so they hold on to the former cells, as far as these are not shared.
 */
public final class CellChanges {
    /** No changes. */
    public static final CellChanges NONE = new CellChanges(Optional.empty(),
            new CellGrid(Slots.none(), Slots.none(), Optional.empty()));

    private final int count;
    private final Optional<Comparison> comparison;
    private final CellGrid now;

    /** The changes of a solved matrix; none where there was none before. */
    CellChanges(Optional<Comparison> comparison, CellGrid now) {
        this.count = comparison.map(with -> with.differing(now)).orElse(0);
        this.comparison = comparison;
        this.now = now;
    }

    /** How many cells have changed. */
    public int count() {
        return count;
    }

    /** Whether no cell has changed. */
    public boolean isEmpty() {
        return count == 0;
    }

    /** All changes; each is made when the stream comes to it. */
    public Stream<CellChange> stream() {
        return isEmpty() ? Stream.empty()
                : IntStream.range(0, now.lines()).boxed().flatMap(line -> ofLine(comparison.orElseThrow(), line));
    }

    /** All changes at once, where they are known to be few. */
    public List<CellChange> toList() {
        return stream().toList();
    }

    private Stream<CellChange> ofLine(Comparison with, int line) {
        return with.asked(line).filter(column -> with.differs(line, column, now.word(line, column)))
                .mapToObj(column -> new CellChange(line, column, with.former(line, column),
                        with.now(line, column, now.word(line, column))));
    }
}
