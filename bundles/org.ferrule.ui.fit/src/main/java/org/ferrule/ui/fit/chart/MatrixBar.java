/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.chart;

import java.util.EnumMap;
import java.util.Map;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;
import org.ferrule.chart.look.VerdictLook;
import org.ferrule.ui.fit.answer.VerdictImages;
import org.ferrule.ui.fit.beside.SidePart;
import org.ferrule.ui.fit.matrix.MatrixContent;
import org.ferrule.ui.fit.matrix.MatrixTable;
import org.ferrule.ui.fit.matrix.Side;
import org.ferrule.ui.look.ThemeChange;

/** The bar above the matrix: filters by words and by verdict, which are the legend too, and the size of cells. */
final class MatrixBar {

    private static final int FILTER_WIDTH = 60;
    private static final int LEAST_FILTER = 170;

    private final Map<Side, Text> filters = new EnumMap<>(Side.class);
    private final Map<VerdictLook, ToolItem> looks = new EnumMap<>(VerdictLook.class);
    private final Composite control;
    private final ViewTools tools;
    private final ToolBar legend;
    private boolean wrapped;
    private MatrixTable table;

    MatrixBar(Composite parent) {
        control = new Composite(parent, SWT.NONE);
        control.setBackground(parent.getBackground());
        GridLayoutFactory.fillDefaults().numColumns(4).spacing(6, 0).applyTo(control);
        // the bar folds itself to the width of the page, and so must not ask for one
        GridDataFactory.fillDefaults().grab(true, false).hint(LEAST_FILTER, SWT.DEFAULT).applyTo(control);
        for (Side side : Side.values()) {
            filters.put(side, filter(side));
        }
        legend = addLooks();
        tools = new ViewTools(control);
        control.addListener(SWT.Resize, event -> wrap());
    }

    /** Connects the bar with the matrix that it is for. */
    void connect(MatrixTable matrix, SidePart side, Runnable showNextChanges) {
        table = matrix;
        tools.connect(matrix, side, showNextChanges);
    }

    /** Opens what stands beside the matrix, or folds it away. */
    void showBeside(boolean shown) {
        tools.showBeside(shown);
    }

    private Text filter(Side side) {
        Text text = new Text(control, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
        text.setMessage("Only " + side.word() + "s with");
        text.setToolTipText("Show only lines in whose head all these words occur");
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).hint(FILTER_WIDTH, SWT.DEFAULT)
                .applyTo(text);
        text.addModifyListener(event -> {
            if (table.content().filter(side, text.getText())) {
                table.refresh();
            }
        });
        return text;
    }

    private ToolBar addLooks() {
        ToolBar bar = new ToolBar(control, SWT.FLAT | SWT.RIGHT);
        ThemeChange.ground(bar);
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).applyTo(bar);
        VerdictImages images = new VerdictImages(bar);
        for (VerdictLook look : VerdictLook.values()) {
            ToolItem item = new ToolItem(bar, SWT.CHECK);
            item.setImage(images.of(look));
            item.setText(look.word());
            item.setSelection(true);
            item.setToolTipText("Cells that say \"" + look.word() + "\"; lines without a wanted cell are left out");
            item.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> want(look, item)));
            looks.put(look, item);
        }
        return bar;
    }

    /** Where there is not room enough in one row, the verdicts get a row of their own. */
    private void wrap() {
        int needed = legend.computeSize(SWT.DEFAULT, SWT.DEFAULT).x + tools.width() + 2 * LEAST_FILTER;
        boolean narrow = control.getSize().x < needed;
        if (narrow != wrapped) {
            wrapped = narrow;
            ((GridLayout) control.getLayout()).numColumns = narrow ? 3 : 4;
            ((GridData) legend.getLayoutData()).horizontalSpan = narrow ? 3 : 1;
            if (narrow) {
                legend.moveBelow(null);
            } else {
                legend.moveAbove(tools.control());
            }
            // not at once: who gives the bar its size just now would put what follows it over the second row
            control.getDisplay().asyncExec(this::layParent);
        }
    }

    private void layParent() {
        if (!control.isDisposed()) {
            control.getParent().layout(true, true);
        }
    }

    private void want(VerdictLook look, ToolItem item) {
        if (table.content().want(look, item.getSelection())) {
            table.refresh();
        }
    }

    /** Shows how many cells have each look. */
    void showCounts(MatrixContent content) {
        boolean changed = false;
        for (Map.Entry<VerdictLook, ToolItem> look : looks.entrySet()) {
            String text = look.getKey().word() + "  " + content.count(look.getKey());
            if (!text.equals(look.getValue().getText())) {
                changed |= text.length() != look.getValue().getText().length();
                look.getValue().setText(text);
            }
        }
        if (changed) {
            control.layout(true, true);
            wrap();
        }
    }

    /** Shows the tools as the matrix stands. */
    void showTools() {
        tools.refresh();
    }

    /** Shows the filters as they stand after they were taken back. */
    void showFilters() {
        filters.forEach((side, text) -> text.setText(table.content().axis(side).filter()));
        looks.forEach((look, item) -> item.setSelection(table.content().wants(look)));
    }
}
