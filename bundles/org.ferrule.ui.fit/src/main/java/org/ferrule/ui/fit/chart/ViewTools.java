/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.chart;

import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;
import org.ferrule.ui.fit.beside.SidePart;
import org.ferrule.ui.fit.matrix.MatrixTable;
import org.ferrule.ui.fit.matrix.Zoom;
import org.ferrule.ui.look.ThemeChange;

/** The tools that change how the matrix is looked at: the size of cells, and what stands beside it. */
final class ViewTools {

    private final ToolBar bar;
    private final ToolItem sums;
    private final ToolItem changes;
    private final ToolItem beside;

    private MatrixTable table;
    private SidePart side;
    private Runnable showNextChanges;

    ViewTools(Composite parent) {
        bar = new ToolBar(parent, SWT.FLAT);
        ThemeChange.ground(bar);
        push("\u2212", "Smaller cells", () -> zoom(-1));
        push("+", "Larger cells", () -> zoom(1));
        new ToolItem(bar, SWT.SEPARATOR);
        sums = item(SWT.CHECK, "Sums", "How many cells of each line have each verdict; a click on a sum sorts by them",
                this::switchSums);
        changes = item(SWT.CHECK, "Changes",
                "Only what has changed since the last save; pressed again: since the sign-off; then all lines",
                () -> showNextChanges.run());
        beside = item(SWT.CHECK, "Conditions", "Conditions of the chart and its sign-off beside the matrix",
                this::switchBeside);
    }

    Control control() {
        return bar;
    }

    /** The room that the tools need. */
    int width() {
        return bar.computeSize(SWT.DEFAULT, SWT.DEFAULT).x;
    }

    void connect(MatrixTable matrix, SidePart part, Runnable nextChanges) {
        showNextChanges = nextChanges;
        table = matrix;
        side = part;
        beside.setSelection(part.isOpen());
    }

    private void switchSums() {
        table.showSums(sums.getSelection());
    }

    /** Shows the tools as the matrix stands. */
    void refresh() {
        sums.setSelection(table.content().sums().shown());
        changes.setSelection(table.content().changes().isPresent());
    }

    private void switchBeside() {
        showBeside(beside.getSelection());
    }

    private void push(String text, String tooltip, Runnable work) {
        item(SWT.PUSH, text, tooltip, work);
    }

    private ToolItem item(int style, String text, String tooltip, Runnable work) {
        ToolItem item = new ToolItem(bar, style);
        item.setText(text);
        item.setToolTipText(tooltip);
        item.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> work.run()));
        return item;
    }

    private void zoom(int step) {
        int next = table.zoom().ordinal() + step;
        if (next >= 0 && next < Zoom.values().length) {
            table.zoom(Zoom.values()[next]);
        }
    }

    /** Opens what stands beside the matrix, or folds it away. */
    void showBeside(boolean shown) {
        beside.setSelection(shown);
        side.show(shown);
    }
}
