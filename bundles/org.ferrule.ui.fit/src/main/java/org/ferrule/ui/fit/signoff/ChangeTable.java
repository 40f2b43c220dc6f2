/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.signoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.stream.Stream;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.ferrule.engine.signoff.SignOffState;
import org.ferrule.engine.signoff.VerdictChange;
import org.ferrule.fit.device.Phase;

/** What has changed since a chart was signed off: verdicts with before and after, devices, documents, conditions. */
final class ChangeTable {

    private static final int MOST = 1000;
    private static final int WHAT = 190;
    private static final int VERDICT = 85;

    private final Table table;
    private final BiConsumer<String, String> reveal;

    /**
     * Creates a table.
     *
     * @param lines how many lines it shows without scrolling
     * @param reveal shows the cell of two lines, given by their keys
     */
    ChangeTable(Composite parent, int lines, BiConsumer<String, String> reveal) {
        this.reveal = reveal;
        table = new Table(parent, SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.H_SCROLL | SWT.BORDER);
        table.setHeaderVisible(true);
        column("Changed", WHAT);
        column("Then", VERDICT);
        column("Now", VERDICT);
        table.setToolTipText("Press Enter on a verdict to go to its cell");
        GridDataFactory.fillDefaults().grab(true, false).span(3, 1)
                .hint(WHAT, table.getItemHeight() * lines + table.getHeaderHeight()).exclude(true).applyTo(table);
        table.setVisible(false);
        table.addListener(SWT.DefaultSelection, event -> open((TableItem) event.item));
    }

    private void column(String heading, int width) {
        TableColumn column = new TableColumn(table, SWT.NONE);
        column.setText(heading);
        column.setWidth(width);
    }

    private void open(TableItem item) {
        if (item.getData() instanceof VerdictChange change) {
            reveal.accept(change.outerKey(), change.innerKey());
        }
    }

    void show(Optional<SignOffState> state) {
        table.removeAll();
        state.ifPresent(this::fill);
        boolean needed = table.getItemCount() > 0;
        ((GridData) table.getLayoutData()).exclude = !needed;
        table.setVisible(needed);
    }

    private void fill(SignOffState state) {
        state.documents().forEach(path -> add(null, path, "", "another document"));
        state.asked().forEach(statement -> add(null, statement, "", ""));
        state.added().forEach(name -> add(null, name, "", "added"));
        state.gone().forEach(key -> add(null, key, "", "gone"));
        state.verdicts().stream().limit(MOST).forEach(change -> add(change,
                change.inner() + " in " + change.outer() + (change.phase() == Phase.OUT ? ", coming out" : ""),
                change.before().word(), change.after().word()));
        if (state.verdictCount() > MOST) {
            add(null, "and " + (state.verdictCount() - MOST) + " more verdicts", "", "");
        }
    }

    private void add(Object data, String... texts) {
        TableItem item = new TableItem(table, SWT.NONE);
        item.setText(texts);
        item.setData(data);
    }

    List<String> texts() {
        List<String> texts = new ArrayList<>();
        Stream.of(table.getItems())
                .forEach(item -> texts.add(item.getText(0) + ": " + item.getText(1) + " > " + item.getText(2)));
        return texts;
    }
}
