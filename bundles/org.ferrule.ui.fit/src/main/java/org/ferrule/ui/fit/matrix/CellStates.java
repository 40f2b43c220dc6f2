/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.eclipse.swt.widgets.Display;
import org.ferrule.fit.matrix.CellChanges;

/** What cells show for a while: that they have just changed, or that they wait for another answer. */
final class CellStates {

    /** Answers that come sooner would only make the matrix flicker. */
    private static final int STALE_AFTER_MS = 250;
    private static final int CHANGED_FOR_MS = 2000;
    /** Where more cells change than that, it is the whole matrix that has changed. */
    private static final int MOST_SHOWN = 100_000;

    /** A cell of the chart, by indexes. */
    record Place(int outer, int inner) {
    }

    private final MatrixContent content;
    private final Display display = Display.getCurrent();
    private final Runnable repaint;
    private final Runnable repaintChanged;
    private final Runnable becomeStale = this::becomeStale;
    private final Runnable settle = this::settle;
    private Set<Place> changed = Set.of();
    private boolean stale;

    /**
     * Creates states.
     *
     * @param repaint paints all cells anew
     * @param repaintChanged paints those anew that have just changed
     */
    CellStates(MatrixContent content, Runnable repaint, Runnable repaintChanged) {
        this.content = content;
        this.repaint = repaint;
        this.repaintChanged = repaintChanged;
    }

    boolean showsStale() {
        return stale;
    }

    Set<Place> changed() {
        return changed;
    }

    /** Whether the cell that is shown at a position has just changed. */
    boolean justChanged(int column, int row) {
        if (changed.isEmpty() || row >= content.rows().size() || column >= content.columns().size()) {
            return false;
        }
        boolean turned = content.rowSide() == Side.INNER;
        int[] outer = content.axis(Side.OUTER).indexes(turned ? column : row);
        int[] inner = content.axis(Side.INNER).indexes(turned ? row : column);
        return IntStream.of(outer).anyMatch(o -> IntStream.of(inner).anyMatch(i -> changed.contains(new Place(o, i))));
    }

    /** Shows that another answer is awaited, if it lets itself be awaited. */
    void await() {
        display.timerExec(STALE_AFTER_MS, becomeStale);
    }

    /** The answer is there; tells whether all cells have to be painted anew for it. */
    boolean arrived(CellChanges changes) {
        display.timerExec(-1, becomeStale);
        boolean all = stale || changes.count() > MOST_SHOWN;
        stale = false;
        if (!changes.isEmpty()) {
            settle();
            changed = changes.count() > MOST_SHOWN ? Set.of()
                    : changes.stream().map(change -> new Place(change.outerIndex(), change.innerIndex()))
                            .collect(Collectors.toSet());
            display.timerExec(CHANGED_FOR_MS, settle);
        }
        return all;
    }

    private void becomeStale() {
        stale = true;
        repaint.run();
    }

    private void settle() {
        repaintChanged.run();
        changed = Set.of();
    }

    void dispose() {
        display.timerExec(-1, becomeStale);
        display.timerExec(-1, settle);
    }
}
