/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.part;

import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.ferrule.ui.devices.table.RowTable;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.edit.order.ElementMoves;
import org.ferrule.ui.edit.order.Reordering;
import org.ferrule.ui.edit.order.RowDrag;

/**
 * Moves the selected parts of a list, by dragging, by Alt with the arrow keys, or step by step; several stand together
 * then. Inherited parts stand where their line has them, and cannot be moved.
 */
final class PartMoves {

    private final RowTable<Shown> table;
    private final ElementMoves moves;

    PartMoves(DocumentSession session, RowTable<Shown> table) {
        this.table = table;
        moves = new ElementMoves(session, this::selected);
        Table widget = table.control();
        RowDrag.in(widget, () -> moves.isMovable() && widget.getSortColumn() == null, row -> true,
                (row, after) -> moveBefore(row instanceof TableItem item ? widget.indexOf(item) + (after ? 1 : 0)
                        : widget.getItemCount()));
        widget.addListener(SWT.KeyDown, moves::press);
    }

    ElementMoves moves() {
        return moves;
    }

    private List<EObject> selected() {
        List<Shown> rows = table.selection();
        return rows.stream().anyMatch(Shown::isInherited) ? List.of()
                : rows.stream().map(row -> row.own().orElseThrow()).toList();
    }

    /** Moves the selected parts before a row of the table; those that are only inherited stay where they are. */
    private void moveBefore(int row) {
        List<EObject> siblings = Reordering.siblings(selected().get(0));
        moves.moveBefore(table.rows().stream().skip(row).flatMap(other -> other.own().stream()).findFirst()
                .map(siblings::indexOf).orElse(siblings.size()));
    }
}
