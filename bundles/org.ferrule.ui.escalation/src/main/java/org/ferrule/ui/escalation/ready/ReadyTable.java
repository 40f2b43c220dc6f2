/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.ready;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.function.Function;

import org.eclipse.jface.layout.PixelConverter;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.jface.viewers.TableViewerFocusCellManager;
import org.eclipse.jface.viewers.ViewerCell;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.escalation.technique.Move;
import org.ferrule.ui.look.Colours;

/** Cases against techniques; a cell is opened by a click, or by Enter where the arrow keys have led. */
final class ReadyTable {

    private static final int CASE_CHARACTERS = 48;
    private static final int MARK_CHARACTERS = 17;
    private static final int MOST_CHARACTERS = 28;
    private static final String GOES_ON = "\u2026";

    private final TableViewer viewer;
    private final TableViewerFocusCellManager focus;
    private final BiConsumer<ReadyCase, String> open;
    private Map<String, String> moves = new LinkedHashMap<>();

    /**
     * Creates the table.
     *
     * @param open gets a case and the id of a technique, or an empty one
     */
    ReadyTable(Composite parent, BiConsumer<ReadyCase, String> open) {
        this.open = open;
        viewer = new TableViewer(parent, SWT.SINGLE | SWT.FULL_SELECTION | SWT.H_SCROLL | SWT.V_SCROLL);
        viewer.setContentProvider(ArrayContentProvider.getInstance());
        viewer.getTable().setHeaderVisible(true);
        viewer.getTable().setLinesVisible(true);
        ColumnViewerToolTipSupport.enableFor(viewer);
        addColumn("Case", "", CASE_CHARACTERS, shown -> shorten(shown.title(), CASE_CHARACTERS));
        focus = new TableViewerFocusCellManager(viewer, new CellFrame(viewer));
        viewer.getTable().addListener(SWT.MouseUp, this::click);
        viewer.getTable()
                .addSelectionListener(SelectionListener.widgetDefaultSelectedAdapter(event -> openFocused()));
    }

    private void click(Event event) {
        ViewerCell cell = viewer.getCell(new Point(event.x, event.y));
        if (cell != null && event.button == 1) {
            open(cell);
        }
    }

    private void openFocused() {
        if (focus.getFocusCell() != null) {
            open(focus.getFocusCell());
        }
    }

    private void open(ViewerCell cell) {
        int column = cell.getColumnIndex();
        open.accept((ReadyCase) cell.getElement(), column == 0 ? "" : List.copyOf(moves.keySet()).get(column - 1));
    }

    private void addColumn(String title, String move, int characters, Function<ReadyCase, String> text) {
        TableViewerColumn column = new TableViewerColumn(viewer, SWT.NONE);
        column.getColumn().setText(shorten(title, MOST_CHARACTERS));
        column.getColumn().setToolTipText(title);
        column.getColumn().pack();
        int wanted = new PixelConverter(viewer.getTable()).convertWidthInCharsToPixels(characters) + 14;
        column.getColumn().setWidth(Math.max(wanted, column.getColumn().getWidth()));
        column.setLabelProvider(new ColumnLabelProvider() {
            @Override
            public String getText(Object element) {
                return text.apply((ReadyCase) element);
            }

            @Override
            public String getToolTipText(Object element) {
                ReadyCase shown = (ReadyCase) element;
                String why = move.isEmpty() ? shown.title() + (shown.problem().isEmpty() ? "" : "\n" + shown.problem())
                        : shown.why(move);
                return why.isEmpty() ? null : why;
            }

            @Override
            public Color getForeground(Object element) {
                return ((ReadyCase) element).mark(move).filter(m -> m == ReadyMark.NOT_PLANNED).isPresent()
                        ? Colours.muted() : null;
            }
        });
    }

    /** A title that is cut off says so. */
    private static String shorten(String title, int most) {
        return title.length() <= most ? title : title.substring(0, most - 1).stripTrailing() + GOES_ON;
    }

    /** Shows cases; the columns are the techniques and set-ups of all of them. */
    void show(List<ReadyCase> cases) {
        Map<String, String> all = new LinkedHashMap<>();
        cases.forEach(shown -> shown.plan().map(Plan::ladder).ifPresent(ladder -> {
            ladder.setups().forEach((Move move) -> all.putIfAbsent(move.id(), move.name()));
            ladder.techniques().stream().filter(t -> !t.tries().isEmpty())
                    .forEach(move -> all.putIfAbsent(move.id(), move.name()));
        }));
        if (!all.equals(moves)) {
            columns(all);
        }
        viewer.setInput(cases);
    }

    private void columns(Map<String, String> all) {
        viewer.setInput(List.of());
        TableColumn[] old = viewer.getTable().getColumns();
        for (int i = old.length - 1; i > 0; i--) {
            old[i].dispose();
        }
        moves = all;
        moves.forEach((move, name) -> addColumn(name, move,
                Math.max(MARK_CHARACTERS, Math.min(MOST_CHARACTERS, name.length() + 3)),
                shown -> shown.mark(move).map(ReadyMark::words).orElse(shown.problem().isEmpty() ? "" : "? no plan")));
    }

    Table control() {
        return viewer.getTable();
    }
}
