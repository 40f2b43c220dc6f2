/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.grid;

import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.ferrule.ui.devices.sheet.SheetColumn;
import org.ferrule.ui.devices.sheet.SheetLine;

/** The keys of the table: typing opens a cell, F2 opens it with what it holds, space folds a group. */
final class GridKeys {

    private static final int COMMANDS = SWT.CTRL | SWT.ALT | SWT.COMMAND;

    private final SheetGrid grid;
    private final CellTyping typing;
    private final GridActions actions;

    GridKeys(SheetGrid grid, CellTyping typing, GridActions actions) {
        this.grid = grid;
        this.typing = typing;
        this.actions = actions;
    }

    void connect() {
        grid.control().addListener(SWT.KeyDown, this::pressed);
    }

    private void pressed(Event event) {
        Optional<SheetLine> line = grid.selection().line();
        boolean command = (event.stateMask & COMMANDS) != 0;
        if (command) {
            if ((event.stateMask & SWT.MOD1) != 0 && event.keyCode == 'd') {
                actions.fillDown().run();
            }
        } else if (event.keyCode == SWT.F2) {
            typing.open(null);
        } else if (event.keyCode == SWT.INSERT) {
            actions.add().run();
        } else if (event.keyCode == SWT.ESC) {
            giveUp(line);
        } else if (line.orElse(null) instanceof SheetLine.Head head) {
            fold(head, event);
        } else if (event.character > ' ' && event.character != SWT.DEL) {
            typing.open(String.valueOf(event.character));
        }
    }

    private void giveUp(Optional<SheetLine> line) {
        Optional<SheetColumn> column = grid.selection().column();
        line.flatMap(SheetLine::row).ifPresent(row -> column.ifPresent(in -> typing.forget(row, in)));
    }

    private void fold(SheetLine.Head head, Event event) {
        boolean toggled = event.keyCode == ' ' || event.keyCode == SWT.CR
                || event.character == '-' && !head.folded() || event.character == '+' && head.folded();
        if (toggled) {
            grid.toggle(head);
        }
    }
}
