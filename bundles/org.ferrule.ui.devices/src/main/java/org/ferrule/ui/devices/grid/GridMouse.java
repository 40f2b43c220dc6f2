/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.grid;

import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.nebula.widgets.nattable.config.AbstractUiBindingConfiguration;
import org.eclipse.nebula.widgets.nattable.ui.binding.UiBindingRegistry;
import org.eclipse.nebula.widgets.nattable.ui.matcher.MouseEventMatcher;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.MouseEvent;
import org.ferrule.ui.devices.sheet.SheetLine;

/** The mouse: a click on the head of a column sorts, one on that of a group folds, two on a cell open it. */
final class GridMouse extends AbstractUiBindingConfiguration {

    private final SheetGrid grid;
    private final CellTyping typing;

    GridMouse(SheetGrid grid, CellTyping typing) {
        this.grid = grid;
        this.typing = typing;
    }

    @Override
    public void configureUiBindings(UiBindingRegistry bindings) {
        bindings.registerFirstSingleClickBinding(MouseEventMatcher.columnHeaderLeftClick(SWT.NONE), this::sort);
        bindings.registerFirstDoubleClickBinding(MouseEventMatcher.bodyLeftClick(SWT.NONE), (table, event) -> open());
        bindings.registerFirstSingleClickBinding(MouseEventMatcher.rowHeaderLeftClick(SWT.NONE), this::fold);
    }

    private void sort(NatTable table, MouseEvent event) {
        int column = table.getColumnIndexByPosition(table.getColumnPositionByX(event.x));
        if (column >= 0) {
            grid.sortBy(grid.columns().get(column));
        }
    }

    private void open() {
        if (grid.selection().line().orElse(null) instanceof SheetLine.Head head) {
            grid.toggle(head);
        } else {
            typing.open(null);
        }
    }

    private void fold(NatTable table, MouseEvent event) {
        if (grid.selection().line().orElse(null) instanceof SheetLine.Head head) {
            grid.toggle(head);
        }
    }
}
