/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.robot;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;

/** The list of proposals below a field. */
public final class Proposals {

    private final Robot robot;
    private final Shell main;

    /** Watches over the lists of the fields of a window. */
    public Proposals(Robot robot, Shell main) {
        this.robot = robot;
        this.main = main;
    }

    /** Tells whether a list is open. */
    public boolean areShown() {
        return list().isPresent();
    }

    private Optional<Table> list() {
        return Stream.of(main.getDisplay().getShells()).filter(shell -> shell != main && shell.isVisible())
                .flatMap(shell -> Widgets.all(shell, Table.class)).filter(table -> table.getItemCount() > 0)
                .findFirst();
    }

    /** Waits for a list and returns its entries. */
    public List<String> entries() {
        robot.waitFor("proposals", this::areShown);
        return Stream.of(list().orElseThrow().getItems()).map(TableItem::getText).toList();
    }

    /** Waits for a list and takes the first entry with the words. */
    public void choose(String words) {
        List<String> all = entries();
        choose(all.indexOf(all.stream().filter(entry -> entry.contains(words)).findFirst().orElseThrow()));
    }

    /**
     * Waits for a list and takes an entry by its index. Posted keys and clicks do not reach the shell of the list (SWT 3.132 on
     * GTK), so its table is told.
     */
    public void choose(int index) {
        robot.waitFor("proposals", this::areShown);
        Table table = list().orElseThrow();
        table.setSelection(index);
        table.notifyListeners(SWT.Selection, new Event());
        table.notifyListeners(SWT.DefaultSelection, new Event());
        robot.waitFor("no proposals", () -> !areShown());
        main.forceActive();
        robot.settle();
    }
}
