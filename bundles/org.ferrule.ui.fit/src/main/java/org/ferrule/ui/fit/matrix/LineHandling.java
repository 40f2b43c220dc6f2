/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

import java.util.List;
import java.util.OptionalInt;

/** What is done with lines by mouse and keys: sorted, folded, pinned, moved, exchanged. */
public final class LineHandling {

    private final MatrixTable table;
    private final MatrixContent content;
    private LineMover mover = (side, keys, other, after) -> {
    };

    LineHandling(MatrixTable table) {
        this.table = table;
        this.content = table.content();
    }

    /** Sets how lines are moved. */
    public void onMove(LineMover wanted) {
        mover = wanted;
    }

    /** Sorts by the line under a place of a head, or by sums where the place shows one. */
    void sortAt(Side side, int x, int y) {
        int position = table.positionAt(side, x, y);
        boolean other = position >= 0
                && (table.isSum(x, y) ? content.sortBySums(side) : content.sortBy(side, position));
        if (other) {
            table.refresh();
        }
        table.control().redraw();
    }

    /** Sorts the lines of a side by their sums, the other way round, or no more; without sums they are shown first. */
    public void sortBySums(Side side) {
        content.showSums(true);
        content.sortBySums(side);
        table.refresh();
    }

    /** Folds the group under a place of a head, or unfolds it. */
    void foldAt(Side side, int x, int y) {
        int position = table.positionAt(side, x, y);
        if (position >= 0) {
            fold(side, position);
        }
    }

    /** Folds the group of a line, or unfolds it; what stands for a selected line is selected then. */
    public void fold(Side side, int position) {
        MatrixAxis axis = content.axis(side);
        String group = axis.line(position).head().group();
        if (group.isEmpty()) {
            return;
        }
        boolean selected = table.selection().position(side).equals(OptionalInt.of(position));
        int first = axis.index(position);
        content.change(side, changed -> changed.folded().turn(group));
        table.refresh();
        if (selected) {
            table.selection().goTo(side, axis.keyShowing(first));
        }
    }

    /** Folds the group of the selected line of a side, or unfolds it. */
    public void foldSelected(Side side) {
        table.selection().position(side).ifPresent(position -> fold(side, position));
    }

    /** Folds all groups of a side, or none. */
    public void foldAll(Side side, boolean fold) {
        content.change(side, axis -> axis.foldAll(fold));
        table.refresh();
    }

    /** Pins a line to the edge, or lets it go. */
    public void pin(Side side, String key) {
        content.change(side, axis -> axis.order().turnPin(key));
        table.refresh();
    }

    /** Pins the selected line of a side to the edge, or lets it go. */
    public void pinSelected(Side side) {
        table.selection().position(side)
                .ifPresent(position -> pin(side, content.axis(side).line(position).key()));
    }

    /** The positions of the lines that are moved with the one at a position: all that are selected, if it is. */
    List<Integer> movedWith(Side side, int position) {
        List<Integer> selected = selected(side);
        return selected.contains(position) ? selected : List.of(position);
    }

    /** Who has selected a whole row has not selected all columns. */
    private List<Integer> selected(Side side) {
        List<Integer> all = table.selection().positions(side);
        return all.size() < content.axis(side).size() ? all
                : table.selection().position(side).stream().boxed().toList();
    }

    /** Moves lines to where another is shown; that one and those between give way. */
    void move(Side side, List<Integer> positions, int to, boolean after) {
        MatrixAxis axis = content.axis(side);
        boolean between = to >= 0 && to < axis.size() && !positions.contains(to);
        if (between && !axis.isFolded(to) && positions.stream().noneMatch(axis::isFolded)) {
            mover.move(side, positions.stream().map(position -> axis.line(position).key()).toList(),
                    axis.line(to).key(), after);
        }
    }

    /** Moves the selected lines of a side one place up (-1) or down (1); they stand together then. */
    public void moveSelected(Side side, int by) {
        List<Integer> selected = selected(side);
        if (!selected.isEmpty()) {
            int edge = by < 0 ? selected.get(0) : selected.get(selected.size() - 1);
            move(side, selected, edge + by, by > 0);
        }
    }

    /** Exchanges rows and columns. */
    public void transpose() {
        content.transpose();
        table.refresh();
    }
}
