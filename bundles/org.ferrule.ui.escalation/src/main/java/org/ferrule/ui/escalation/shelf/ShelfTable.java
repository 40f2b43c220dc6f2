/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.shelf;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.eclipse.jface.layout.PixelConverter;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnViewerEditor;
import org.eclipse.jface.viewers.ColumnViewerEditorActivationEvent;
import org.eclipse.jface.viewers.ColumnViewerEditorActivationStrategy;
import org.eclipse.jface.viewers.FocusCellOwnerDrawHighlighter;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.jface.viewers.TableViewerEditor;
import org.eclipse.jface.viewers.TableViewerFocusCellManager;
import org.eclipse.jface.viewers.Viewer;
import org.eclipse.jface.viewers.ViewerComparator;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.ferrule.model.StockItem;
import org.ferrule.model.StockLot;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.look.Colours;
import org.ferrule.ui.look.ColumnRoom;

/** The lots of a shelf in a table whose cells are edited in place: by a double click, F2 or Enter. */
final class ShelfTable {

    private static final int STATE_CHARACTERS = 24;

    private final TableViewer viewer;
    private final LocalDate today = LocalDate.now();

    ShelfTable(Composite parent, DocumentSession session, ScanLine messages) {
        viewer = new TableViewer(parent, SWT.SINGLE | SWT.FULL_SELECTION | SWT.BORDER | SWT.H_SCROLL | SWT.V_SCROLL);
        viewer.setContentProvider(ArrayContentProvider.getInstance());
        Table table = viewer.getTable();
        table.setHeaderVisible(true);
        table.setLinesVisible(true);
        PixelConverter pixels = new PixelConverter(table);
        for (ShelfColumn column : ShelfColumn.values()) {
            TableViewerColumn made = column(column.title(), pixels.convertWidthInCharsToPixels(column.characters()),
                    column::text);
            made.getColumn().setToolTipText(column.explanation());
            made.setEditingSupport(new CellEditing(viewer, session, column, messages));
            if (column == ShelfColumn.NAME) {
                column("State", pixels.convertWidthInCharsToPixels(STATE_CHARACTERS), this::state);
            }
        }
        ColumnRoom.share(table);
        edit();
    }

    private void edit() {
        TableViewerFocusCellManager focus = new TableViewerFocusCellManager(viewer,
                new FocusCellOwnerDrawHighlighter(viewer));
        ColumnViewerEditorActivationStrategy strategy = new ColumnViewerEditorActivationStrategy(viewer) {
            @Override
            protected boolean isEditorActivationEvent(ColumnViewerEditorActivationEvent event) {
                boolean key = event.eventType == ColumnViewerEditorActivationEvent.KEY_PRESSED
                        && (event.keyCode == SWT.CR || event.keyCode == SWT.F2);
                return key || event.eventType == ColumnViewerEditorActivationEvent.MOUSE_DOUBLE_CLICK_SELECTION
                        || event.eventType == ColumnViewerEditorActivationEvent.TRAVERSAL
                        || event.eventType == ColumnViewerEditorActivationEvent.PROGRAMMATIC;
            }
        };
        strategy.setEnableEditorActivationWithKeyboard(true);
        TableViewerEditor.create(viewer, focus, strategy, ColumnViewerEditor.TABBING_HORIZONTAL
                | ColumnViewerEditor.TABBING_MOVE_TO_ROW_NEIGHBOR | ColumnViewerEditor.KEYBOARD_ACTIVATION);
    }

    private TableViewerColumn column(String title, int width, Function<LotRow, String> text) {
        TableViewerColumn column = new TableViewerColumn(viewer, SWT.NONE);
        column.getColumn().setText(title);
        column.getColumn().setWidth(width + 14);
        column.getColumn().setMoveable(true);
        column.setLabelProvider(new ColumnLabelProvider() {
            @Override
            public String getText(Object element) {
                return text.apply((LotRow) element);
            }

            @Override
            public Color getForeground(Object element) {
                return ((LotRow) element).states(today).contains(ShelfState.EXPIRED) ? Colours.muted() : null;
            }
        });
        column.getColumn().addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> sort(column, text)));
        return column;
    }

    private void sort(TableViewerColumn column, Function<LotRow, String> text) {
        Table table = viewer.getTable();
        boolean again = table.getSortColumn() == column.getColumn();
        table.setSortColumn(again ? null : column.getColumn());
        table.setSortDirection(again ? SWT.NONE : SWT.UP);
        viewer.setComparator(again ? null : new ViewerComparator() {
            @Override
            public int compare(Viewer v, Object one, Object two) {
                return Comparator.comparing(text, String.CASE_INSENSITIVE_ORDER).compare((LotRow) one, (LotRow) two);
            }
        });
    }

    private String state(LotRow row) {
        return row.states(today).stream().map(ShelfState::words).collect(Collectors.joining(", "));
    }

    /** Shows rows; the one that is selected stays selected while it is there. */
    void show(List<LotRow> rows, String filter) {
        viewer.setInput(filter.isBlank() ? rows : rows.stream().filter(row -> row.matches(filter, today)).toList());
    }

    /** Returns the row that is selected. */
    Optional<LotRow> selected() {
        return Optional.ofNullable((LotRow) viewer.getStructuredSelection().getFirstElement());
    }

    /** Selects the row of a lot and scrolls to it. */
    void select(StockLot lot) {
        select(new LotRow((StockItem) lot.eContainer(), lot));
    }

    void select(LotRow row) {
        viewer.setSelection(new StructuredSelection(row), true);
    }

    /** Scrolls to a column and takes the keyboard. */
    boolean show(ShelfColumn column) {
        viewer.getTable().showColumn(viewer.getTable().getColumn(place(column)));
        return viewer.getTable().setFocus();
    }

    /** The state stands after the name. */
    private static int place(ShelfColumn column) {
        return column == ShelfColumn.NAME ? 0 : column.ordinal() + 1;
    }

    /** Begins to edit a cell of the row that is selected. */
    void edit(ShelfColumn column) {
        selected().ifPresent(row -> viewer.editElement(row, place(column)));
    }

    void onSelect(Runnable action) {
        viewer.addSelectionChangedListener(event -> action.run());
    }

    Table control() {
        return viewer.getTable();
    }
}
