/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.find;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.ferrule.ui.look.Colours;

/** The hits of a search, each with a tick that can be taken away. */
final class HitTable {

    private static final String[] HEADS = { "Device", "Field", "Before", "After", "Remark" };
    private static final int[] WIDTHS = { 150, 260, 150, 150, 240 };

    private final Table table;
    private final Runnable changed;
    private final Set<Integer> ticked = new HashSet<>();
    private List<Hit> hits = List.of();

    HitTable(Composite parent, Runnable changed) {
        this.changed = changed;
        table = new Table(parent,
                SWT.CHECK | SWT.VIRTUAL | SWT.FULL_SELECTION | SWT.BORDER | SWT.V_SCROLL | SWT.H_SCROLL);
        table.setHeaderVisible(true);
        for (int i = 0; i < HEADS.length; i++) {
            TableColumn column = new TableColumn(table, SWT.NONE);
            column.setText(HEADS[i]);
            column.setWidth(WIDTHS[i]);
        }
        table.addListener(SWT.SetData, this::fill);
        table.addListener(SWT.Selection, this::tick);
    }

    private void fill(Event event) {
        Hit hit = hits.get(event.index);
        TableItem item = (TableItem) event.item;
        item.setText(new String[] { hit.device(), hit.where(), hit.before(), hit.after(), hit.remark() });
        item.setChecked(ticked.contains(event.index));
        item.setForeground(hit.reading().readable() ? null : Colours.error());
    }

    private void tick(Event event) {
        if (event.detail == SWT.CHECK) {
            TableItem item = (TableItem) event.item;
            int index = table.indexOf(item);
            if (item.getChecked() && hits.get(index).replaceable()) {
                ticked.add(index);
            } else {
                ticked.remove(index);
                item.setChecked(false);
            }
            changed.run();
        }
    }

    /** Shows other hits; those that nothing speaks against are ticked. */
    void show(List<Hit> found) {
        hits = List.copyOf(found);
        tickAll(true);
    }

    /** Ticks all that nothing speaks against, or none. */
    void tickAll(boolean all) {
        ticked.clear();
        for (int i = 0; all && i < hits.size(); i++) {
            if (hits.get(i).harmless()) {
                ticked.add(i);
            }
        }
        table.setItemCount(hits.size());
        table.clearAll();
        changed.run();
    }

    List<Hit> hits() {
        return hits;
    }

    List<Hit> ticked() {
        return ticked.stream().sorted().map(hits::get).toList();
    }

    Optional<Hit> selected() {
        int index = table.getSelectionIndex();
        return index < 0 ? Optional.empty() : Optional.of(hits.get(index));
    }

    Table control() {
        return table;
    }
}
