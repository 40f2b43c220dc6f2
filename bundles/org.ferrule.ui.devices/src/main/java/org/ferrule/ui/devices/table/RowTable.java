/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.table;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.ferrule.ui.look.Colours;

/**
 * A table of rows, sorted by a click on the head of a column: rising, falling, and as listed again. Cells are asked for
 * when they come into view. Rows are told apart by {@code equals}.
 *
 * @param <R> what stands in a row
 */
public final class RowTable<R> {

    private final Table table;
    private final List<RowColumn<R>> columns;
    private List<R> listed = List.of();
    private List<R> shown = List.of();
    private RowColumn<R> sorted;

    /**
     * Creates a table without rows.
     *
     * @param style {@code SWT.SINGLE} or {@code SWT.MULTI}
     */
    public RowTable(Composite parent, int style, List<RowColumn<R>> columns) {
        this.columns = List.copyOf(columns);
        table = new Table(parent, style | SWT.VIRTUAL | SWT.FULL_SELECTION | SWT.BORDER | SWT.H_SCROLL | SWT.V_SCROLL);
        table.setHeaderVisible(true);
        double character = characterWidth();
        columns.forEach(column -> create(column, character));
        table.addListener(SWT.SetData, this::fill);
    }

    private double characterWidth() {
        GC gc = new GC(table);
        try {
            return gc.getFontMetrics().getAverageCharacterWidth();
        } finally {
            gc.dispose();
        }
    }

    private void create(RowColumn<R> column, double character) {
        TableColumn widget = new TableColumn(table, SWT.NONE);
        widget.setText(column.title());
        widget.setToolTipText(column.tooltip().isEmpty() ? null : column.tooltip());
        widget.setWidth((int) Math.ceil(column.characters() * character) + 16);
        widget.setMoveable(true);
        widget.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> sortBy(column, widget)));
    }

    private void fill(Event event) {
        TableItem item = (TableItem) event.item;
        int index = event.index;
        if (index < 0 || index >= shown.size()) {
            return;
        }
        R row = shown.get(index);
        for (int i = 0; i < columns.size(); i++) {
            item.setText(i, columns.get(i).text().apply(row));
            item.setImage(i, columns.get(i).image().apply(row));
            mute(item, i, columns.get(i).muted().test(row));
        }
    }

    /** Slanted too, so that it is not told by colour alone. */
    private static void mute(TableItem item, int column, boolean muted) {
        item.setForeground(column, muted ? Colours.muted() : null);
        item.setFont(column, muted ? JFaceResources.getFontRegistry().getItalic(JFaceResources.DEFAULT_FONT) : null);
    }

    private void sortBy(RowColumn<R> column, TableColumn widget) {
        boolean again = sorted == column;
        int direction = again ? table.getSortDirection() == SWT.UP ? SWT.DOWN : SWT.NONE : SWT.UP;
        sorted = direction == SWT.NONE ? null : column;
        table.setSortColumn(sorted == null ? null : widget);
        table.setSortDirection(direction);
        setRows(listed);
    }

    private Comparator<R> order() {
        return table.getSortDirection() == SWT.UP ? sorted.rising() : sorted.falling();
    }

    /** Shows other rows; those that are selected and still there stay selected. */
    public void setRows(List<R> rows) {
        List<R> selected = selection();
        listed = List.copyOf(rows);
        shown = sorted == null ? listed : listed.stream().sorted(order()).toList();
        table.deselectAll();
        table.setItemCount(shown.size());
        table.clearAll();
        selectAll(selected);
    }

    /** Shows what has changed in the rows. */
    public void refresh() {
        table.clearAll();
    }

    /** Returns the rows as they are shown. */
    public List<R> rows() {
        return shown;
    }

    /** Returns the rows that are selected. */
    public List<R> selection() {
        return IntStream.of(table.getSelectionIndices()).filter(index -> index < shown.size()).mapToObj(shown::get)
                .toList();
    }

    /** Selects a row and scrolls to it; tells no listener. */
    public boolean select(R row) {
        table.deselectAll();
        selectAll(List.of(row));
        table.showSelection();
        return table.getSelectionCount() > 0;
    }

    private void selectAll(List<R> rows) {
        Map<R, Integer> places = new HashMap<>();
        IntStream.range(0, shown.size()).forEach(i -> places.put(shown.get(i), i));
        List<Integer> found = new ArrayList<>();
        rows.stream().filter(places::containsKey).map(places::get).forEach(found::add);
        table.select(found.stream().mapToInt(Integer::intValue).toArray());
    }

    /** Sets what is done when the user selects something else. */
    public void onSelect(Runnable action) {
        table.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> action.run()));
    }

    /** Sets what is done when the user presses a key, such as {@code SWT.INSERT}. */
    public void onKey(int keyCode, Runnable action) {
        table.addListener(SWT.KeyDown, event -> {
            if (event.keyCode == keyCode && event.stateMask == 0) {
                action.run();
            }
        });
    }

    /** Returns the widget. */
    public Table control() {
        return table;
    }
}
