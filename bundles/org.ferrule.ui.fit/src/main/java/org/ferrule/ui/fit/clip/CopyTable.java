/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.clip;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/** A table of texts that can be copied to a spreadsheet, by its menu and by key while it has the focus. */
public final class CopyTable {

    private static final int LEAST_COLUMN = 70;
    private static final int LARGEST_COLUMN = 320;

    private final Table table;

    /** Creates an empty table of which several rows can be selected. */
    public CopyTable(Composite parent) {
        this(parent, SWT.MULTI);
    }

    /**
     * Creates an empty table.
     *
     * @param style {@code SWT.SINGLE} or {@code SWT.MULTI}
     */
    public CopyTable(Composite parent, int style) {
        table = new Table(parent, style | SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.H_SCROLL);
        table.setHeaderVisible(true);
        table.setLinesVisible(true);
        Menu menu = new Menu(table);
        item(menu, "&Copy Table\tCtrl+C", this::copy);
        if (style == SWT.MULTI) {
            item(menu, "Select &All", table::selectAll);
        }
        table.setMenu(menu);
        CopyKey.of(table, this::copy);
    }

    private static void item(Menu menu, String text, Runnable work) {
        MenuItem item = new MenuItem(menu, SWT.PUSH);
        item.setText(text);
        item.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> work.run()));
    }

    /** Returns the table. */
    public Table control() {
        return table;
    }

    /** Shows other rows; columns that stay the same keep their width. */
    public void show(List<String> heads, List<List<String>> rows) {
        table.setRedraw(false);
        boolean same = heads.equals(Stream.of(table.getColumns()).map(TableColumn::getText).toList());
        int top = table.getTopIndex();
        table.removeAll();
        if (!same) {
            Stream.of(table.getColumns()).forEach(TableColumn::dispose);
            heads.forEach(head -> new TableColumn(table, SWT.NONE).setText(head));
        }
        rows.forEach(row -> new TableItem(table, SWT.NONE).setText(row.toArray(String[]::new)));
        if (!same) {
            Stream.of(table.getColumns()).forEach(CopyTable::fit);
        }
        table.setTopIndex(top);
        table.setRedraw(true);
    }

    /** Makes all columns as wide as their texts and images, which may have come later. */
    public void fit() {
        Stream.of(table.getColumns()).forEach(TableColumn::pack);
    }

    private static void fit(TableColumn column) {
        column.pack();
        column.setWidth(Math.max(LEAST_COLUMN, Math.min(LARGEST_COLUMN, column.getWidth())));
    }

    /** Returns the texts of all rows. */
    public List<List<String>> texts() {
        return Stream.of(table.getItems()).map(item -> IntStream.range(0, table.getColumnCount())
                .mapToObj(item::getText).toList()).toList();
    }

    /** Puts the rows that are selected, or all when one or none is, into the clipboard, heads first. */
    public void copy() {
        TableItem[] chosen = table.getSelectionCount() > 1 ? table.getSelection() : table.getItems();
        List<String> lines = new ArrayList<>();
        lines.add(Stream.of(table.getColumns()).map(TableColumn::getText).collect(Collectors.joining("\t")));
        Stream.of(chosen).forEach(item -> lines.add(line(item)));
        TextCopy.put(table, String.join("\n", lines) + "\n");
    }

    private String line(TableItem item) {
        return IntStream.range(0, table.getColumnCount()).mapToObj(item::getText).collect(Collectors.joining("\t"));
    }
}
