/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.grid;

import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.nebula.widgets.nattable.grid.GridRegion;
import org.eclipse.nebula.widgets.nattable.tooltip.NatTableContentTooltip;
import org.eclipse.swt.widgets.Event;
import org.ferrule.ui.devices.sheet.SheetColumn;
import org.ferrule.ui.devices.sheet.SheetLine;
import org.ferrule.ui.devices.sheet.SheetProblems;
import org.ferrule.ui.devices.sheet.SheetRow;

/** What the mouse is told where it rests: what a column shows, what is wrong with a device, what a cell inherits. */
final class GridTips extends NatTableContentTooltip {

    private final SheetGrid grid;
    private final SheetProblems problems;

    GridTips(NatTable table, SheetGrid grid, SheetProblems problems) {
        super(table, GridRegion.BODY, GridRegion.COLUMN_HEADER, GridRegion.ROW_HEADER);
        this.grid = grid;
        this.problems = problems;
    }

    @Override
    protected String getText(Event event) {
        int column = natTable.getColumnPositionByX(event.x);
        int row = natTable.getRowPositionByY(event.y);
        int columnIndex = natTable.getColumnIndexByPosition(column);
        int rowIndex = natTable.getRowIndexByPosition(row);
        String words = "";
        if (natTable.getRegionLabelsByXY(event.x, event.y).hasLabel(GridRegion.COLUMN_HEADER) && columnIndex >= 0) {
            words = head(grid.columns().get(columnIndex));
        } else if (rowIndex >= 0 && rowIndex < grid.listing().lines().size()
                && grid.listing().lines().get(rowIndex) instanceof SheetLine.Of line) {
            boolean inBody = natTable.getRegionLabelsByXY(event.x, event.y).hasLabel(GridRegion.BODY);
            words = inBody && columnIndex >= 0 ? cell(line.value(), grid.columns().get(columnIndex))
                    : problems.words(line.value());
        }
        return words.isEmpty() ? null : words;
    }

    private static String head(SheetColumn column) {
        return column.explanation().isEmpty() ? column.title() : column.title() + ": " + column.explanation();
    }

    private String cell(SheetRow row, SheetColumn column) {
        if ("problems".equals(column.id())) {
            return problems.words(row);
        }
        String text = column.text(row);
        return text.isEmpty() ? "" : text + (column.inherited(row) ? "\nStated by the line, for all its sizes" : "");
    }
}
