/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

import org.eclipse.nebula.widgets.nattable.grid.layer.ColumnHeaderLayer;
import org.eclipse.nebula.widgets.nattable.grid.layer.CornerLayer;
import org.eclipse.nebula.widgets.nattable.grid.layer.GridLayer;
import org.eclipse.nebula.widgets.nattable.grid.layer.RowHeaderLayer;
import org.eclipse.nebula.widgets.nattable.group.performance.ColumnGroupHeaderLayer;
import org.eclipse.nebula.widgets.nattable.group.performance.GroupModel;
import org.eclipse.nebula.widgets.nattable.group.performance.RowGroupHeaderLayer;
import org.eclipse.nebula.widgets.nattable.layer.DataLayer;
import org.eclipse.nebula.widgets.nattable.layer.event.StructuralRefreshEvent;
import org.eclipse.nebula.widgets.nattable.painter.layer.GridLineCellLayerPainter;
import org.eclipse.nebula.widgets.nattable.selection.SelectionLayer;
import org.eclipse.nebula.widgets.nattable.viewport.ViewportLayer;

/** The layers of the table: answers that scroll, heads and groups that stay. */
final class MatrixLayers {

    private final MatrixContent content;
    private final DataLayer answers;
    private final DataLayer outerHeads;
    private final DataLayer innerHeads;
    private final SelectionLayer selection;
    private final ViewportLayer viewport;
    private final RowGroupHeaderLayer outerGroups;
    private final ColumnGroupHeaderLayer innerGroups;
    private final GridLayer grid;

    MatrixLayers(MatrixContent content) {
        this.content = content;
        answers = new DataLayer(MatrixData.answers(content));
        selection = new SelectionLayer(answers);
        selection.setLayerPainter(new GridLineCellLayerPainter());
        viewport = new ViewportLayer(selection);
        innerHeads = new DataLayer(MatrixData.heads(content, Side.INNER));
        outerHeads = new DataLayer(MatrixData.heads(content, Side.OUTER));
        ColumnHeaderLayer columns = new ColumnHeaderLayer(innerHeads, viewport, selection, false);
        RowHeaderLayer rows = new RowHeaderLayer(outerHeads, viewport, selection, false);
        innerGroups = new ColumnGroupHeaderLayer(columns, selection, false);
        innerGroups.setCalculateHeight(true);
        outerGroups = new RowGroupHeaderLayer(rows, selection, false);
        outerGroups.setCalculateWidth(true);
        CornerLayer corner = new CornerLayer(new DataLayer(MatrixData.corner()), outerGroups, innerGroups);
        grid = new GridLayer(viewport, innerGroups, outerGroups, corner, false);
    }

    GridLayer grid() {
        return grid;
    }

    SelectionLayer selection() {
        return selection;
    }

    ViewportLayer viewport() {
        return viewport;
    }

    void measure(CellMeasures measures) {
        answers.setDefaultColumnWidth(measures.cellWidth());
        answers.setDefaultRowHeight(measures.cellHeight());
        outerHeads.setDefaultColumnWidth(measures.headRoom(Side.OUTER));
        outerHeads.setDefaultRowHeight(measures.cellHeight());
        innerHeads.setDefaultColumnWidth(measures.cellWidth());
        innerHeads.setDefaultRowHeight(measures.headRoom(Side.INNER));
        int strip = SumPainter.wide(measures);
        outerHeads.setColumnWidthByPosition(1, strip, false);
        innerHeads.setRowHeightByPosition(1, SumPainter.high(measures, measures.cellWidth()), false);
        innerGroups.setRowHeight(measures.groupRoom());
        outerGroups.setColumnWidth(measures.groupRoom());
    }

    /** Other lines are shown. */
    void refresh() {
        group(innerGroups.getGroupModel(), content.axis(Side.INNER));
        group(outerGroups.getGroupModel(), content.axis(Side.OUTER));
        answers.fireLayerEvent(new StructuralRefreshEvent(answers));
        outerHeads.fireLayerEvent(new StructuralRefreshEvent(outerHeads));
        innerHeads.fireLayerEvent(new StructuralRefreshEvent(innerHeads));
    }

    /** One head above each run of lines of one group. */
    private static void group(GroupModel groups, MatrixAxis axis) {
        groups.clear();
        int start = 0;
        for (int i = 1; i <= axis.size(); i++) {
            if (i == axis.size() || !groupAt(axis, i).equals(groupAt(axis, start))) {
                add(groups, groupAt(axis, start), start, i - start);
                start = i;
            }
        }
    }

    private static void add(GroupModel groups, String name, int start, int span) {
        if (!name.isEmpty() && span > 0) {
            groups.addGroup(name, start, span);
        }
    }

    private static String groupAt(MatrixAxis axis, int position) {
        return axis.line(position).head().group();
    }
}
