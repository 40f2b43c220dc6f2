/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.matrix;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.quick.QuickInner;
import org.ferrule.fit.quick.QuickOuter;

/**
 * Where the cells of a question come from: devices that were made ready once, and the solver for those for which that is
 * not enough. Immutable.
 */
final class CellSource {
    private static final Comparator<Prepared<ReadDevice, QuickInner>> BY_SIZE = Comparator
            .comparing(column -> column.quick().orElse(null), Comparator.nullsLast(QuickInner.BY_SIZE));

    private final SolverCells exact;
    private final Preparation preparation;
    /**
     * Whether lines, and columns, share their words when they are answered alike. Not where the solver has to be asked
     * about any device, since it may know more of others than what quick answers are made from.
     */
    private final boolean isShared;
    private final Slots<Prepared<MatrixLine, QuickOuter>> lines;
    private final Slots<Prepared<ReadDevice, QuickInner>> columns;
    /** By slot; null where the solver has to be asked. In an array, since every cell of a column needs another one. */
    private final QuickOuter[] outers;
    /** By tile: all its columns, and the fresh ones. */
    private final List<CellBlock> blocks;
    private final List<Optional<CellBlock>> freshBlocks;

    private CellSource(SolverCells exact, Preparation preparation, boolean isShared,
            Slots<Prepared<MatrixLine, QuickOuter>> lines, Slots<Prepared<ReadDevice, QuickInner>> columns,
            QuickOuter[] formerOuters, List<CellBlock> former) {
        this.exact = exact;
        this.preparation = preparation;
        this.isShared = isShared;
        this.lines = lines;
        this.columns = columns;
        this.outers = Arrays.copyOf(formerOuters, lines.count());
        lines.freshSlots().forEach(slot -> outers[slot] = lines.key(slot).flatMap(Prepared::quick).orElse(null));
        int tiles = CellGrid.tiles(columns.count());
        this.freshBlocks = IntStream.range(0, tiles).mapToObj(
                tile -> Optional.of(columns.freshOf(tile)).filter(slots -> slots.length > 0).map(this::block)).toList();
        this.blocks = IntStream.range(0, tiles)
                .mapToObj(tile -> freshBlocks.get(tile).isEmpty() ? former.get(tile) : block(columns.slotsOf(tile)))
                .toList();
    }

    private CellBlock block(int[] slots) {
        return new CellBlock(preparation.solver().block(
                IntStream.of(slots).mapToObj(slot -> columns.key(slot).flatMap(Prepared::quick)).toList()), slots);
    }

    /** The source for a question of which nothing is known. */
    static CellSource of(MatrixQuestion question) {
        SolverCells exact = new SolverCells(question);
        Preparation preparation = Preparation.of(question, exact.solver());
        List<Optional<QuickOuter>> outer = Preparation.all(question.outer(), preparation::quick);
        List<Optional<QuickInner>> inner = Preparation.all(question.inner(), preparation::quick);
        boolean isShared = Stream.concat(outer.stream(), inner.stream()).allMatch(Optional::isPresent);
        return new CellSource(exact, preparation, isShared,
                Slots.of(prepared(question.outer(), outer, isShared), (a, b) -> 0),
                Slots.of(prepared(question.inner(), inner, isShared), BY_SIZE), new QuickOuter[0], List.of());
    }

    private static <T, Q> List<Prepared<T, Q>> prepared(List<T> things, List<Optional<Q>> quick, boolean isShared) {
        return IntStream.range(0, things.size()).mapToObj(i -> new Prepared<>(things.get(i), quick.get(i), isShared))
                .toList();
    }

    /** The source for the next question: with the slots of what has not changed, where not too much has. */
    CellSource next(MatrixQuestion question, Comparison comparison) {
        boolean isLikeBefore = comparison.hasSameTerms() && comparison.lines().areMostlySame()
                && comparison.columns().areMostlySame() && knowsNamesIn(question, comparison);
        return Optional.of(question).filter(q -> isLikeBefore).map(q -> continued(q, comparison))
                .filter(CellSource::isOfUse).orElseGet(() -> of(question));
    }

    private boolean knowsNamesIn(MatrixQuestion question, Comparison comparison) {
        return IntStream.of(comparison.lines().touched())
                .allMatch(i -> preparation.knowsNamesIn(question.outer().get(i).device().device()))
                && IntStream.of(comparison.columns().touched())
                        .allMatch(i -> preparation.knowsNamesIn(question.inner().get(i).device()));
    }

    private CellSource continued(MatrixQuestion question, Comparison comparison) {
        return new CellSource(new SolverCells(question), preparation, isShared,
                lines.next(comparison.lines(), i -> prepared(question.outer().get(i))),
                columns.next(comparison.columns(), i -> prepared(question.inner().get(i))), outers, blocks);
    }

    private Prepared<MatrixLine, QuickOuter> prepared(MatrixLine line) {
        return new Prepared<>(line, preparation.quick(line), isShared);
    }

    private Prepared<ReadDevice, QuickInner> prepared(ReadDevice device) {
        return new Prepared<>(device, preparation.quick(device), isShared);
    }

    /** Whether few slots are free, and nothing is shared that must not be. */
    private boolean isOfUse() {
        return !lines.isSparse() && !columns.isSparse()
                && !(isShared && (lines.anyFresh(Prepared::isSlow) || columns.anyFresh(Prepared::isSlow)));
    }

    Slots<Prepared<MatrixLine, QuickOuter>> lines() {
        return lines;
    }

    Slots<Prepared<ReadDevice, QuickInner>> columns() {
        return columns;
    }

    /** The columns of a tile. */
    CellBlock block(int tile) {
        return blocks.get(tile);
    }

    /** The fresh columns of a tile, where there are any. */
    Optional<CellBlock> freshBlock(int tile) {
        return freshBlocks.get(tile);
    }

    /** A reader for the use of one thread. */
    CellReader reader() {
        return new CellReader(exact, outers, lines, columns, preparation.solver().row());
    }
}
