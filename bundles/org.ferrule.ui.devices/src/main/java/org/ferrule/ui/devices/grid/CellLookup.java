/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.grid;

import java.lang.reflect.InvocationTargetException;
import java.util.Iterator;
import java.util.List;
import java.util.function.Consumer;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;
import org.ferrule.ui.devices.sheet.SheetColumn;
import org.ferrule.ui.devices.sheet.SheetRow;

/**
 * Looks up what stands in many cells before somebody needs all of them. Only the display's thread may read the document,
 * so it does so a few rows at a time and answers in between; the window shows that it is busy and, if it takes longer,
 * how far it is and how to cancel that.
 */
final class CellLookup {

    /** So many rows take less time than a busy cursor needs to be seen. */
    private static final int FEW = 1000;
    private static final int AT_ONCE = 100;

    private final Control table;

    CellLookup(Control table) {
        this.table = table;
    }

    /** Looks cells up as far as that takes long; tells whether they are known now, or the user has cancelled it. */
    boolean of(List<SheetColumn> columns, List<SheetRow> rows) {
        List<SheetRow> unknown = rows.stream().filter(row -> !columns.stream().allMatch(column -> column.knows(row)))
                .toList();
        return unknown.size() < FEW || isDone(columns, unknown);
    }

    /** While the window is busy it takes no keys: who had the keyboard gets it back. */
    private boolean isDone(List<SheetColumn> columns, List<SheetRow> rows) {
        Control focus = table.getDisplay().getFocusControl();
        boolean done = isLookedUp(columns, rows);
        if (focus != null && !focus.isDisposed()) {
            focus.setFocus();
        }
        return done;
    }

    private boolean isLookedUp(List<SheetColumn> columns, List<SheetRow> rows) {
        Display display = table.getDisplay();
        try {
            PlatformUI.getWorkbench().getProgressService()
                    .busyCursorWhile(
                            monitor -> run(rows, monitor, left -> display.syncExec(() -> some(columns, left))));
            return true;
        } catch (InterruptedException e) {
            return false;
        } catch (InvocationTargetException e) {
            throw new IllegalStateException("the cells of " + rows.size() + " rows cannot be looked up", e.getCause());
        }
    }

    private static void run(List<SheetRow> rows, IProgressMonitor monitor, Consumer<Iterator<SheetRow>> some)
            throws InterruptedException {
        monitor.beginTask("Looking up the figures of " + rows.size() + " entries", rows.size());
        Iterator<SheetRow> left = rows.iterator();
        while (left.hasNext()) {
            if (monitor.isCanceled()) {
                throw new InterruptedException();
            }
            some.accept(left);
            monitor.worked(AT_ONCE);
        }
        monitor.done();
    }

    private static void some(List<SheetColumn> columns, Iterator<SheetRow> left) {
        for (int i = 0; i < AT_ONCE && left.hasNext(); i++) {
            SheetRow row = left.next();
            columns.forEach(column -> column.key(row));
        }
    }
}
