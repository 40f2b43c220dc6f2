/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.effect;

import java.util.List;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.ferrule.chart.look.VerdictLook;
import org.ferrule.ui.fit.answer.VerdictImages;

/** Verdicts before and after an edit, one pair a row. */
final class EffectTable {

    private static final int BEFORE = 3;
    private static final int AFTER = 4;

    private final List<VerdictChange> changes;
    private final VerdictImages images;

    EffectTable(Composite parent, List<VerdictChange> changes) {
        this.changes = changes;
        Table table = new Table(parent, SWT.VIRTUAL | SWT.BORDER | SWT.FULL_SELECTION | SWT.H_SCROLL | SWT.V_SCROLL);
        table.setHeaderVisible(true);
        GridDataFactory.fillDefaults().grab(true, true).hint(1180, 320).applyTo(table);
        images = new VerdictImages(table);
        column(table, "Chart", 190);
        column(table, "Outer device", 240);
        column(table, "Inner device", 220);
        column(table, "As saved", 110);
        column(table, "After the edit", 110);
        column(table, "Why", 460);
        table.addListener(SWT.SetData, this::fill);
        table.setItemCount(changes.size());
    }

    private static void column(Table table, String title, int width) {
        TableColumn column = new TableColumn(table, SWT.NONE);
        column.setText(title);
        column.setWidth(width);
    }

    private void fill(Event event) {
        VerdictChange change = changes.get(event.index);
        TableItem item = (TableItem) event.item;
        String back = change.phase().equals("out") ? " (out)" : "";
        item.setText(new String[] { change.chart().getName(), change.outer(), change.inner(),
            word(change.before()) + back, word(change.after()) + back, change.reason().get() });
        item.setImage(BEFORE, images.of(change.before()));
        item.setImage(AFTER, images.of(change.after()));
    }

    private static String word(VerdictLook look) {
        return look.word();
    }
}
