/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

import java.util.HashMap;
import java.util.Map;

import org.ferrule.fit.matrix.FitMatrix;

/** The sums of verdicts that the matrix shows: of lines, where that is wanted, and of folded groups. */
public final class ShownSums {

    private final MatrixContent content;
    private final LineSums lines = new LineSums();
    private final Map<Place, VerdictSum> folded = new HashMap<>();
    private boolean shown;

    /** Where something is shown. */
    private record Place(int row, int column) {
    }

    ShownSums(MatrixContent content) {
        this.content = content;
    }

    /** Tells whether each line shows the sum of its verdicts. */
    public boolean shown() {
        return shown;
    }

    void show(boolean wanted) {
        shown = wanted;
    }

    /** There are other answers. */
    void answered(FitMatrix matrix, boolean onlyChanges) {
        if (onlyChanges && shown) {
            lines.bring(matrix);
        } else {
            lines.forget();
        }
    }

    /** Other lines are shown, or elsewhere. */
    void arranged() {
        folded.clear();
    }

    /** Returns the sum of the verdicts of a line, given by its position; of a folded group, of all its lines. */
    public VerdictSum of(Side side, int position) {
        VerdictSum sum = new VerdictSum();
        for (int index : content.axis(side).indexes(position)) {
            sum.add(ofLine(side, index));
        }
        return sum;
    }

    /** The sum of a line, given by its place in the chart. */
    VerdictSum ofLine(Side side, int index) {
        lines.bring(content.matrix());
        return lines.of(side, index);
    }

    /** Returns the sum of the verdicts at a position, where a group is folded. */
    public VerdictSum at(int row, int column) {
        return folded.computeIfAbsent(new Place(row, column), place -> summed(row, column));
    }

    private VerdictSum summed(int row, int column) {
        boolean turned = content.rowSide() == Side.INNER;
        VerdictSum sum = new VerdictSum();
        for (int outer : content.axis(Side.OUTER).indexes(turned ? column : row)) {
            for (int inner : content.axis(Side.INNER).indexes(turned ? row : column)) {
                sum.add(content.matrix().in(outer, inner).verdict(), 1);
            }
        }
        return sum;
    }
}
