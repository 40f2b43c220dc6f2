/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.grid;

import java.util.List;
import java.util.Optional;

import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.nebula.widgets.nattable.grid.layer.ColumnHeaderLayer;
import org.eclipse.nebula.widgets.nattable.grid.layer.CornerLayer;
import org.eclipse.nebula.widgets.nattable.grid.layer.GridLayer;
import org.eclipse.nebula.widgets.nattable.grid.layer.RowHeaderLayer;
import org.eclipse.nebula.widgets.nattable.hideshow.ColumnHideShowLayer;
import org.eclipse.nebula.widgets.nattable.layer.DataLayer;
import org.eclipse.nebula.widgets.nattable.layer.event.RowStructuralRefreshEvent;
import org.eclipse.nebula.widgets.nattable.painter.layer.GridLineCellLayerPainter;
import org.eclipse.nebula.widgets.nattable.reorder.ColumnReorderLayer;
import org.eclipse.nebula.widgets.nattable.selection.SelectionLayer;
import org.eclipse.nebula.widgets.nattable.viewport.ViewportLayer;
import org.eclipse.swt.graphics.Rectangle;
import org.ferrule.ui.devices.sheet.Listing;
import org.ferrule.ui.devices.sheet.SheetColumn;

/** The layers of the table: cells that scroll, columns that are moved and hidden, heads that stay. */
final class GridLayers {

    private static final int ROW_HEAD_WIDTH = 30;

    private final List<SheetColumn> columns;
    private final DataLayer cells;
    private final ColumnReorderLayer order;
    private final ColumnHideShowLayer hiding;
    private final SelectionLayer selection;
    private final ViewportLayer viewport;
    private final DataLayer rowHeads;
    private final DataLayer columnHeads;
    private final GridLayer grid;

    GridLayers(Listing listing, List<SheetColumn> columns) {
        this.columns = columns;
        cells = new DataLayer(GridData.cells(listing, columns));
        order = new ColumnReorderLayer(cells);
        hiding = new ColumnHideShowLayer(order);
        selection = new SelectionLayer(hiding);
        selection.setLayerPainter(new GridLineCellLayerPainter());
        viewport = new ViewportLayer(selection);
        columnHeads = new DataLayer(GridData.columnHeads(columns));
        rowHeads = new DataLayer(GridData.rowHeads(listing));
        rowHeads.setDefaultColumnWidth(ROW_HEAD_WIDTH);
        ColumnHeaderLayer top = new ColumnHeaderLayer(columnHeads, viewport, selection);
        RowHeaderLayer left = new RowHeaderLayer(rowHeads, viewport, selection, false);
        CornerLayer corner = new CornerLayer(new DataLayer(GridData.corner()), left, top);
        grid = new GridLayer(viewport, top, left, corner, false);
    }

    /** Gives rows and columns their first sizes. */
    void measure(int rowHeight, double character) {
        cells.setDefaultRowHeight(rowHeight);
        rowHeads.setDefaultRowHeight(rowHeight);
        columnHeads.setDefaultRowHeight(rowHeight + 4);
        for (int i = 0; i < columns.size(); i++) {
            cells.setColumnWidthByPosition(i, (int) Math.ceil(columns.get(i).characters() * character) + 16);
        }
    }

    GridLayer grid() {
        return grid;
    }

    DataLayer cells() {
        return cells;
    }

    ColumnReorderLayer order() {
        return order;
    }

    ColumnHideShowLayer hiding() {
        return hiding;
    }

    SelectionLayer selection() {
        return selection;
    }

    ViewportLayer viewport() {
        return viewport;
    }

    /** Returns the column at a position, counted without those that are hidden; nothing beyond the last. */
    Optional<SheetColumn> column(int position) {
        int index = position < 0 ? -1 : selection.getColumnIndexByPosition(position);
        return index < 0 ? Optional.empty() : Optional.of(columns.get(index));
    }

    /** Returns the position of a column, or a negative number if it is hidden. */
    int position(SheetColumn column) {
        return selection.getColumnPositionByIndex(columns.indexOf(column));
    }

    /** Returns where a cell is painted; nothing if it is scrolled off. */
    Optional<Rectangle> bounds(NatTable table, int column, int row) {
        int viewRow = row - viewport.getOriginRowPosition();
        int viewColumn = column - viewport.getOriginColumnPosition();
        boolean seen = viewRow >= 0 && viewColumn >= 0 && viewRow < viewport.getRowCount()
                && viewColumn < viewport.getColumnCount();
        return seen ? Optional.ofNullable(table.getBoundsByPosition(
                viewColumn + table.getColumnCount() - viewport.getColumnCount(),
                viewRow + table.getRowCount() - viewport.getRowCount())) : Optional.empty();
    }

    /** Other lines are shown. */
    void refresh() {
        cells.fireLayerEvent(new RowStructuralRefreshEvent(cells));
        rowHeads.fireLayerEvent(new RowStructuralRefreshEvent(rowHeads));
    }
}
