/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.chart;

import java.util.Map;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;
import org.ferrule.ui.fit.matrix.LineSearch;
import org.ferrule.ui.fit.matrix.MatrixTable;
import org.ferrule.ui.fit.matrix.Side;
import org.ferrule.ui.look.Colours;

/** Goes to a device while its name is typed. Takes no room until it is asked for. */
final class SearchBar {

    private static final int WIDTH = 260;
    private static final int PLACE_WIDTH = 80;

    private final Composite control;
    private final Text text;
    private final Label place;
    private MatrixTable table;
    private LineSearch search;
    private Map<Side, String> start = Map.of();

    SearchBar(Composite parent) {
        control = new Composite(parent, SWT.NONE);
        control.setBackground(parent.getBackground());
        GridLayoutFactory.fillDefaults().numColumns(3).applyTo(control);
        GridDataFactory.fillDefaults().exclude(true).applyTo(control);
        control.setVisible(false);
        text = new Text(control, SWT.SEARCH | SWT.ICON_SEARCH);
        text.setMessage("Go to device");
        text.setToolTipText("Goes to the first row or column in whose head all words occur; Enter: the next one, "
                + "Shift+Enter: the one before, Escape: back to the matrix");
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).hint(WIDTH, SWT.DEFAULT).applyTo(text);
        text.addModifyListener(event -> show(search.find(text.getText()), start));
        text.addListener(SWT.KeyDown, this::key);
        addSteps();
        place = new Label(control, SWT.NONE);
        place.setBackground(parent.getBackground());
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).hint(PLACE_WIDTH, SWT.DEFAULT).applyTo(place);
    }

    private void addSteps() {
        ToolBar bar = new ToolBar(control, SWT.FLAT);
        bar.setBackground(control.getBackground());
        add(bar, "\u25b2", "The one before (Shift+F3)", () -> step(-1));
        add(bar, "\u25bc", "The next one (F3)", () -> step(1));
        add(bar, "\u2715", "Back to the matrix", this::close);
    }

    private static void add(ToolBar bar, String name, String tooltip, Runnable work) {
        ToolItem item = new ToolItem(bar, SWT.PUSH);
        item.setText(name);
        item.setToolTipText(tooltip);
        item.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> work.run()));
    }

    /** Connects the bar with the matrix that it is for. */
    void connect(MatrixTable matrix) {
        table = matrix;
        search = new LineSearch(matrix.content());
    }

    private void key(Event event) {
        if (event.keyCode == SWT.ESC) {
            event.doit = false;
            close();
        } else if (event.keyCode == SWT.CR || event.keyCode == SWT.KEYPAD_CR) {
            event.doit = false;
            step((event.stateMask & SWT.SHIFT) != 0 ? -1 : 1);
        }
    }

    void open() {
        start = table.selection().keys();
        room(true);
        text.selectAll();
        text.setFocus();
    }

    private void close() {
        room(false);
        table.control().setFocus();
    }

    private void room(boolean shown) {
        control.setVisible(shown);
        ((GridData) control.getLayoutData()).exclude = !shown;
        control.getParent().layout(true, true);
    }

    /** Goes to the next line that was found, or to the one before. */
    void step(int by) {
        show(search.step(by), table.selection().keys());
    }

    /** While a word is typed, what was found by its first letters leaves no trace. */
    private void show(Optional<LineSearch.Hit> hit, Map<Side, String> from) {
        hit.ifPresent(line -> table.selection().goTo(line.side(), line.key(), from));
        place.setText(search.place());
        place.setForeground(hit.isEmpty() ? Colours.error() : text.getForeground());
    }
}
