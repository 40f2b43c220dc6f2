/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.part;

import java.util.function.BooleanSupplier;
import java.util.function.IntConsumer;

import org.eclipse.jface.util.LocalSelectionTransfer;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DragSource;
import org.eclipse.swt.dnd.DragSourceAdapter;
import org.eclipse.swt.dnd.DragSourceEvent;
import org.eclipse.swt.dnd.DropTarget;
import org.eclipse.swt.dnd.DropTargetAdapter;
import org.eclipse.swt.dnd.DropTargetEvent;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;

/** Lets the selected rows of a table be dragged to another place in it; a line shows where they would go. */
final class RowDrag {

    private final Table table;
    private final BooleanSupplier movable;
    private final IntConsumer drop;
    private final LocalSelectionTransfer transfer = LocalSelectionTransfer.getTransfer();
    private boolean dragging;

    private RowDrag(Table table, BooleanSupplier movable, IntConsumer drop) {
        this.table = table;
        this.movable = movable;
        this.drop = drop;
    }

    /**
     * Lets rows of a table be dragged.
     *
     * @param movable whether those that are selected can be moved now
     * @param drop is told before which row they were dropped; after the last one it gets the number of rows
     */
    static void in(Table table, BooleanSupplier movable, IntConsumer drop) {
        RowDrag drag = new RowDrag(table, movable, drop);
        DragSource source = new DragSource(table, DND.DROP_MOVE);
        source.setTransfer(drag.transfer);
        source.addDragListener(drag.new Source());
        DropTarget target = new DropTarget(table, DND.DROP_MOVE);
        target.setTransfer(new Transfer[] { drag.transfer });
        target.addDropListener(drag.new Target());
    }

    /** The row before which a place of the display lies. */
    private int gapAt(int x, int y) {
        TableItem item = table.getItem(table.toControl(x, y));
        return item == null ? table.getItemCount() : table.indexOf(item) + (isLowerHalf(item, y) ? 1 : 0);
    }

    private boolean isLowerHalf(TableItem item, int y) {
        Rectangle row = item.getBounds();
        return table.toControl(0, y).y > row.y + row.height / 2;
    }

    /** Where rows begin to be dragged. */
    private final class Source extends DragSourceAdapter {

        @Override
        public void dragStart(DragSourceEvent event) {
            event.doit = movable.getAsBoolean();
            dragging = event.doit;
            if (dragging) {
                transfer.setSelection(StructuredSelection.EMPTY);
            }
        }

        @Override
        public void dragSetData(DragSourceEvent event) {
            event.data = transfer.getSelection();
        }

        @Override
        public void dragFinished(DragSourceEvent event) {
            dragging = false;
            transfer.setSelection(null);
        }
    }

    /** Where rows are dropped: only those of the same table. */
    private final class Target extends DropTargetAdapter {

        @Override
        public void dragEnter(DropTargetEvent event) {
            event.detail = dragging ? DND.DROP_MOVE : DND.DROP_NONE;
        }

        @Override
        public void dragOver(DropTargetEvent event) {
            boolean after = event.item instanceof TableItem item && isLowerHalf(item, event.y);
            event.feedback = DND.FEEDBACK_SCROLL
                    | (after ? DND.FEEDBACK_INSERT_AFTER : DND.FEEDBACK_INSERT_BEFORE);
        }

        @Override
        public void drop(DropTargetEvent event) {
            if (dragging) {
                drop.accept(gapAt(event.x, event.y));
            }
        }
    }
}
