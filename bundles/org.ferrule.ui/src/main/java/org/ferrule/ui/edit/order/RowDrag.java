/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit.order;

import java.util.function.BiConsumer;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;

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
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Item;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;

/** Lets the selected rows of a table or tree be dragged to another place in it; a line shows where they would go. */
public final class RowDrag {

    private final Composite rows;
    private final BooleanSupplier movable;
    private final Predicate<Item> takes;
    private final BiConsumer<Item, Boolean> drop;
    private final LocalSelectionTransfer transfer = LocalSelectionTransfer.getTransfer();
    private boolean dragging;

    private RowDrag(Composite rows, BooleanSupplier movable, Predicate<Item> takes, BiConsumer<Item, Boolean> drop) {
        this.rows = rows;
        this.movable = movable;
        this.takes = takes;
        this.drop = drop;
    }

    /**
     * Lets rows be dragged.
     *
     * @param rows the table or tree
     * @param movable whether those that are selected can be moved now
     * @param takes whether they can be dropped beside a row; it gets null below the last one
     * @param drop is told beside which row they were dropped, and whether after it; null stands for below the last one
     */
    public static void in(Composite rows, BooleanSupplier movable, Predicate<Item> takes,
            BiConsumer<Item, Boolean> drop) {
        RowDrag drag = new RowDrag(rows, movable, takes, drop);
        DragSource source = new DragSource(rows, DND.DROP_MOVE);
        source.setTransfer(drag.transfer);
        source.addDragListener(drag.new Source());
        DropTarget target = new DropTarget(rows, DND.DROP_MOVE);
        target.setTransfer(new Transfer[] { drag.transfer });
        target.addDropListener(drag.new Target());
    }

    /** The row at a place of the display; null where there is none. */
    private Item rowAt(int x, int y) {
        Point at = rows.toControl(x, y);
        return rows instanceof Tree tree ? tree.getItem(at) : ((Table) rows).getItem(at);
    }

    private boolean isLowerHalf(Item item, int y) {
        Rectangle row = item instanceof TreeItem node ? node.getBounds() : ((TableItem) item).getBounds();
        return rows.toControl(0, y).y > row.y + row.height / 2;
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
            Item row = rowAt(event.x, event.y);
            boolean possible = dragging && takes.test(row);
            event.detail = possible ? DND.DROP_MOVE : DND.DROP_NONE;
            event.feedback = DND.FEEDBACK_SCROLL | DND.FEEDBACK_EXPAND | (possible ? line(row, event.y) : 0);
        }

        private int line(Item row, int y) {
            return row != null && isLowerHalf(row, y) ? DND.FEEDBACK_INSERT_AFTER : DND.FEEDBACK_INSERT_BEFORE;
        }

        @Override
        public void drop(DropTargetEvent event) {
            Item row = rowAt(event.x, event.y);
            if (dragging && takes.test(row)) {
                drop.accept(row, row != null && isLowerHalf(row, event.y));
            }
        }
    }
}
