/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.chart;

import java.util.Optional;

import org.ferrule.model.Axis;
import org.ferrule.model.FitChart;
import org.ferrule.model.Grouping;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.fit.matrix.Side;

/** By what the lines of a side are grouped: the chart says it, and a command that can be undone changes it. */
final class LineGrouping {

    private final DocumentSession session;
    private final Side side;

    LineGrouping(DocumentSession session, Side side) {
        this.session = session;
        this.side = side;
    }

    Grouping now() {
        return axis().map(Axis::getGroupBy).orElse(Grouping.NONE);
    }

    void by(Grouping grouping) {
        axis().ifPresent(axis -> session.set(axis, Literals.AXIS__GROUP_BY,
                grouping == Grouping.NONE ? null : grouping));
    }

    private Optional<Axis> axis() {
        return session.document().map(FitChart.class::cast)
                .map(chart -> side == Side.OUTER ? chart.getOuter() : chart.getInner());
    }
}
