/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.nebula.widgets.nattable.coordinate.PositionCoordinate;
import org.eclipse.nebula.widgets.nattable.freeze.CompositeFreezeLayer;
import org.eclipse.nebula.widgets.nattable.freeze.FreezeHelper;
import org.eclipse.nebula.widgets.nattable.freeze.FreezeLayer;
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
    private final DataLayer rowHeads;
    private final DataLayer columnHeads;
    private final SelectionLayer selection;
    private final ViewportLayer viewport;
    private final FreezeLayer pinned;
    private final CompositeFreezeLayer body;
    private final RowGroupHeaderLayer rowGroups;
    private final ColumnGroupHeaderLayer columnGroups;
    private final GridLayer grid;

    MatrixLayers(MatrixContent content) {
        this.content = content;
        answers = new DataLayer(MatrixData.answers(content));
        selection = new SelectionLayer(answers);
        selection.setLayerPainter(new GridLineCellLayerPainter());
        viewport = new ViewportLayer(selection);
        pinned = new FreezeLayer(selection);
        body = new CompositeFreezeLayer(pinned, viewport, selection, false);
        columnHeads = new DataLayer(MatrixData.columnHeads(content));
        rowHeads = new DataLayer(MatrixData.rowHeads(content));
        ColumnHeaderLayer columns = new ColumnHeaderLayer(columnHeads, body, selection, false);
        RowHeaderLayer rows = new RowHeaderLayer(rowHeads, body, selection, false);
        columnGroups = new ColumnGroupHeaderLayer(columns, selection, false);
        columnGroups.setCalculateHeight(true);
        rowGroups = new RowGroupHeaderLayer(rows, selection, false);
        rowGroups.setCalculateWidth(true);
        CornerLayer corner = new CornerLayer(new DataLayer(MatrixData.corner()), rowGroups, columnGroups);
        grid = new GridLayer(body, columnGroups, rowGroups, corner, false);
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

    /** Where cells are painted. */
    ShownCells shown(NatTable table) {
        return new ShownCells(table, viewport, pinned);
    }

    void measure(CellMeasures measures, int tableWidth) {
        answers.setDefaultColumnWidth(measures.cellWidth());
        answers.setDefaultRowHeight(measures.cellHeight());
        rowHeads.setDefaultColumnWidth(measures.rowHeadRoom(tableWidth));
        rowHeads.setDefaultRowHeight(measures.cellHeight());
        columnHeads.setDefaultColumnWidth(measures.cellWidth());
        columnHeads.setDefaultRowHeight(measures.columnHeadRoom());
        int strip = SumPainter.wide(measures);
        rowHeads.setColumnWidthByPosition(1, strip, false);
        columnHeads.setRowHeightByPosition(1, SumPainter.high(measures, measures.cellWidth()), false);
        columnGroups.setRowHeight(measures.groupRoom());
        rowGroups.setColumnWidth(measures.groupRoom());
    }

    /** Other lines are shown. */
    void refresh() {
        group(columnGroups.getGroupModel(), content.columns());
        group(rowGroups.getGroupModel(), content.rows());
        answers.fireLayerEvent(new StructuralRefreshEvent(answers));
        rowHeads.fireLayerEvent(new StructuralRefreshEvent(rowHeads));
        columnHeads.fireLayerEvent(new StructuralRefreshEvent(columnHeads));
        pin();
    }

    /** Pinned lines come first; they stay where they are while others scroll. */
    private void pin() {
        int rows = content.rows().pinned();
        int columns = content.columns().pinned();
        if (rows == pinned.getRowCount() && columns == pinned.getColumnCount()) {
            return;
        }
        FreezeHelper.unfreeze(pinned, viewport);
        if (rows > 0 || columns > 0) {
            FreezeHelper.freeze(pinned, viewport, new PositionCoordinate(selection, columns > 0 ? 0 : -1,
                    rows > 0 ? 0 : -1), new PositionCoordinate(selection, columns - 1, rows - 1));
        }
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
