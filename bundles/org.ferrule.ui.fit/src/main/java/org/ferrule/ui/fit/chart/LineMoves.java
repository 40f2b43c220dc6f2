/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.chart;

import java.util.List;
import java.util.Optional;

import org.ferrule.model.Axis;
import org.ferrule.model.FitChart;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.Sorting;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.edit.order.Reordering;
import org.ferrule.ui.fit.matrix.LineMover;
import org.ferrule.ui.fit.matrix.MatrixTable;
import org.ferrule.ui.fit.matrix.Side;

/**
 * Moves lines. Where the chart lists its devices one by one, the list is what changes, by a command that can be undone;
 * elsewhere the chart has no place for an order, so that the editor keeps it.
 */
final class LineMoves implements LineMover {

    private final DocumentSession session;
    private final MatrixTable table;

    LineMoves(DocumentSession session, MatrixTable table) {
        this.session = session;
        this.table = table;
    }

    @Override
    public void move(Side side, List<String> keys, String other, boolean after) {
        Optional<Axis> listed = axis(side).filter(axis -> isListed(axis) && table.content().isUnsorted(side)
                && session.editable());
        if (listed.isPresent()) {
            moveInChart(listed.get(), side, keys, other, after);
        } else {
            table.content().order(side, moved(table.content().keysShown(side), keys, other, after));
            table.refresh();
        }
    }

    private Optional<Axis> axis(Side side) {
        return session.document().map(FitChart.class::cast)
                .map(chart -> side == Side.OUTER ? chart.getOuter() : chart.getInner());
    }

    /** Whether devices are listed one by one, and stand in the order of the list. */
    private static boolean isListed(Axis axis) {
        return axis.getDevices().size() > 1 && axis.getSortBy() == Sorting.AS_LISTED;
    }

    /** Lines of the same device go together, whichever of them is moved. */
    private void moveInChart(Axis axis, Side side, List<String> keys, String other, boolean after) {
        List<String> moving = keys.stream().flatMap(key -> reference(axis, side, key).stream()).distinct().toList();
        Optional<String> beside = reference(axis, side, other).filter(name -> !moving.contains(name));
        if (!moving.isEmpty() && beside.isPresent()) {
            session.set(axis, Literals.AXIS__DEVICES, moved(axis.getDevices(), moving, beside.get(), after));
        }
    }

    private Optional<String> reference(Axis axis, Side side, String key) {
        return table.content().line(side, key).map(line -> HiddenLines.reference(axis, line))
                .filter(axis.getDevices()::contains);
    }

    private static List<String> moved(List<String> all, List<String> names, String other, boolean after) {
        return Reordering.together(all, names, all.indexOf(other) + (after ? 1 : 0));
    }
}
