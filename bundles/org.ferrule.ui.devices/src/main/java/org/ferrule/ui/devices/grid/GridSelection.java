/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.grid;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

import org.eclipse.nebula.widgets.nattable.coordinate.PositionCoordinate;
import org.eclipse.nebula.widgets.nattable.selection.SelectionLayer;
import org.eclipse.swt.graphics.Rectangle;
import org.ferrule.model.DeviceParts;
import org.ferrule.ui.devices.sheet.Listing;
import org.ferrule.ui.devices.sheet.SheetColumn;
import org.ferrule.ui.devices.sheet.SheetLine;
import org.ferrule.ui.devices.sheet.SheetRow;

/** What is selected in the table. */
public final class GridSelection {

    /** More rows than this are not selected again after they have been listed anew. */
    private static final int MOST_RESTORED = 1000;

    private final GridLayers layers;
    private final SelectionLayer selection;
    private final Listing listing;

    GridSelection(GridLayers layers, Listing listing) {
        this.layers = layers;
        this.selection = layers.selection();
        this.listing = listing;
    }

    /** Returns the rows in which a cell is selected, in the order in which they are shown. */
    public List<SheetRow> rows() {
        return rowPositions().mapToObj(listing.lines()::get).flatMap(line -> line.row().stream()).toList();
    }

    private IntStream rowPositions() {
        return selection.getSelectedRowPositions().stream()
                .flatMapToInt(range -> IntStream.range(range.start, range.end))
                .filter(row -> row < listing.lines().size()).sorted().distinct();
    }

    /** Returns the columns in which a cell is selected, in the order in which they are shown. */
    public List<SheetColumn> columns() {
        return IntStream.of(selection.getSelectedColumnPositions()).sorted().mapToObj(layers::column)
                .flatMap(Optional::stream).toList();
    }

    /** Returns all columns that are shown, in their order. */
    public List<SheetColumn> shownColumns() {
        return IntStream.range(0, selection.getColumnCount()).mapToObj(layers::column).flatMap(Optional::stream)
                .toList();
    }

    /** Tells whether all cells of the selected rows are selected. */
    public boolean wholeRows() {
        return selection.getSelectedColumnPositions().length == selection.getColumnCount()
                && rowPositions().limit(MOST_RESTORED).allMatch(selection::isRowPositionFullySelected);
    }

    /** Tells whether a cell is selected. */
    public boolean has(SheetRow row, SheetColumn column) {
        return listing.place(row.parts())
                .filter(place -> selection.isCellPositionSelected(layers.position(column), place)).isPresent();
    }

    /** Returns the line on which the keyboard works. */
    public Optional<SheetLine> line() {
        int row = anchor().getRowPosition();
        return row >= 0 && row < listing.lines().size() ? Optional.of(listing.lines().get(row)) : Optional.empty();
    }

    /** Returns the column in which the keyboard works. */
    public Optional<SheetColumn> column() {
        return layers.column(anchor().getColumnPosition());
    }

    PositionCoordinate anchor() {
        return selection.getSelectionAnchor();
    }

    /** Selects the row of a device, with its first column if none is selected, and scrolls to it. */
    public boolean select(DeviceParts parts) {
        Optional<Integer> row = listing.find(parts);
        row.ifPresent(r -> select(Math.max(0, anchor().getColumnPosition()), r));
        return row.isPresent();
    }

    /** Selects one cell and scrolls to it. */
    void select(int column, int row) {
        selection.selectCell(column, row, false, false);
        layers.viewport().moveCellPositionIntoViewport(column, row);
    }

    /** Selects the next cell in a direction; heads of groups are passed over. */
    void move(int right, int down) {
        int column = anchor().getColumnPosition() + right;
        int row = anchor().getRowPosition() + down;
        while (down != 0 && row >= 0 && row < listing.lines().size() && listing.lines().get(row).row().isEmpty()) {
            row += down;
        }
        if (column >= 0 && column < selection.getColumnCount() && row >= 0 && row < listing.lines().size()) {
            select(column, row);
        }
    }

    /** Does something that moves rows, and selects those again that are still there. */
    void keep(Runnable change) {
        SheetRow anchored = line().flatMap(SheetLine::row).orElse(null);
        int column = Math.max(0, anchor().getColumnPosition());
        List<SheetRow> rows = wholeRows() ? rows() : List.of();
        change.run();
        selection.clear(false);
        if (rows.size() > 1 && rows.size() <= MOST_RESTORED) {
            selectAll(new HashSet<>(rows));
        } else if (anchored != null) {
            listing.place(anchored.parts()).ifPresent(row -> restore(rows.isEmpty(), column, row));
        }
    }

    private void restore(boolean cell, int column, int row) {
        if (cell) {
            selection.selectCell(column, row, false, false);
        } else {
            selection.selectRow(0, row, false, false);
        }
    }

    private void selectAll(Set<SheetRow> rows) {
        IntStream.range(0, listing.lines().size())
                .filter(i -> listing.lines().get(i).row().filter(rows::contains).isPresent())
                .forEach(i -> selection.addSelection(new Rectangle(0, i, selection.getColumnCount(), 1)));
    }
}
