/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.grid;

import java.util.List;
import java.util.Optional;

import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.nebula.widgets.nattable.config.CellConfigAttributes;
import org.eclipse.nebula.widgets.nattable.config.DefaultNatTableStyleConfiguration;
import org.eclipse.nebula.widgets.nattable.selection.event.ISelectionEvent;
import org.eclipse.nebula.widgets.nattable.viewport.event.ScrollEvent;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.BusyIndicator;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.ferrule.model.DeviceParts;
import org.ferrule.ui.devices.sheet.Listing;
import org.ferrule.ui.devices.sheet.SheetColumn;
import org.ferrule.ui.devices.sheet.SheetLine;
import org.ferrule.ui.devices.sheet.SheetProblems;
import org.ferrule.ui.devices.sheet.SheetRow;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.look.Colours;
import org.ferrule.ui.look.ThemeChange;

/** The table of devices: columns that are moved, hidden and made wider, groups that fold, cells that are typed into. */
public final class SheetGrid {

    private final Listing listing;
    private final List<SheetColumn> columns;
    private final GridLayers layers;
    private final GridColumns shownColumns;
    private final GridSelection selection;
    private final Drafts drafts = new Drafts();
    private final NatTable table;
    private final CellTyping typing;
    private Runnable listener = () -> {
    };
    private List<SheetRow> told = List.of();
    private boolean moving;

    /**
     * Creates the table.
     *
     * @param listing its lines
     * @param columns its columns in their first order
     * @param memory the name under which preferences remember the columns
     */
    public SheetGrid(Composite parent, Listing listing, List<SheetColumn> columns, SheetProblems problems,
            DocumentSession session, GridActions actions, String memory) {
        this.listing = listing;
        this.columns = columns;
        layers = new GridLayers(listing, columns);
        selection = new GridSelection(layers, listing);
        table = new NatTable(parent, layers.grid(), false);
        table.setData(SheetGrid.class.getName(), this);
        typing = new CellTyping(this, session);
        GridText text = new GridText();
        table.addConfiguration(new DefaultNatTableStyleConfiguration());
        table.addConfiguration(new GridPaint(
                new CellPaint(listing, columns, drafts, text, layers.grid().getRowHeaderLayer()::getWidth),
                new HeadPaint(listing, columns, text), new RowHeadPaint(listing, problems)));
        table.addConfiguration(new GridMouse(this, typing));
        shownColumns = new GridColumns(layers, columns, table, memory);
        table.configure();
        ThemeChange.follow(table, this::colour);
        shownColumns.connect();
        new GridKeys(this, typing, actions).connect();
        new GridTips(table, this, problems);
        listen();
    }

    private void colour() {
        table.setBackground(Colours.paper());
        table.getConfigRegistry().registerConfigAttribute(CellConfigAttributes.GRID_LINE_COLOR, GridColours.grid());
        table.redraw();
    }

    /** Returns the table that a widget is. */
    public static SheetGrid of(NatTable widget) {
        return (SheetGrid) widget.getData(SheetGrid.class.getName());
    }

    private void listen() {
        table.addListener(SWT.MouseDown, event -> table.forceFocus());
        layers.selection().addLayerListener(event -> {
            if (event instanceof ISelectionEvent && !moving) {
                typing.explain();
                tellSelection();
            }
        });
        layers.viewport().addLayerListener(event -> {
            if (event instanceof ScrollEvent) {
                typing.leave();
            }
        });
    }

    private void tellSelection() {
        List<SheetRow> rows = selection.rows();
        if (!rows.equals(told)) {
            told = rows;
            listener.run();
        }
    }

    /** Sets what is done when other rows are selected. */
    public void onSelect(Runnable action) {
        listener = action;
    }

    /** Returns what is selected. */
    public GridSelection selection() {
        return selection;
    }

    /** Returns the widget. */
    public NatTable control() {
        return table;
    }

    /** Returns the lines. */
    public Listing listing() {
        return listing;
    }

    /** Returns all columns in their first order. */
    public List<SheetColumn> columns() {
        return columns;
    }

    /** Returns which columns are shown. */
    public GridColumns shownColumns() {
        return shownColumns;
    }

    Drafts drafts() {
        return drafts;
    }

    /** Returns how many cells hold a text that cannot be read. */
    public int unreadable() {
        return drafts.size();
    }

    /** Forgets what was left in cells: the document was replaced. */
    public void forgetUnreadable() {
        drafts.clear();
    }

    /** Does something that moves lines; rows that are selected and still there stay selected. */
    public void moveLines(Runnable change) {
        typing.leave();
        moving = true;
        selection.keep(() -> {
            change.run();
            layers.refresh();
        });
        moving = false;
        table.redraw();
        told = selection.rows();
    }

    /** Paints what has changed in the cells. */
    public void redraw() {
        table.redraw();
    }

    /** Sorts by a column: rising, falling, and as in the document again. */
    public void sortBy(SheetColumn column) {
        typing.leave();
        if (lookUp(List.of(column))) {
            BusyIndicator.showWhile(table.getDisplay(), () -> moveLines(() -> listing.sortBy(column)));
        }
    }

    private boolean lookUp(List<SheetColumn> wanted) {
        return new CellLookup(table).of(wanted, listing.all()) && !table.isDisposed();
    }

    void toggle(SheetLine.Head head) {
        int row = selection.anchor().getRowPosition();
        int column = selection.anchor().getColumnPosition();
        moveLines(() -> listing.toggle(head));
        selection.select(column, row);
    }

    /** Selects the row of a device and scrolls to it; nothing is told. */
    public boolean select(DeviceParts parts) {
        int lines = listing.lines().size();
        boolean known = listing.find(parts).isPresent();
        if (listing.lines().size() != lines) {
            layers.refresh();
        }
        moving = true;
        boolean found = known && selection.select(parts);
        moving = false;
        told = selection.rows();
        return found;
    }

    /** Selects all rows, whose cells are known then to who shows what they have in common, or copies them. */
    public void selectAll() {
        if (lookUp(columns)) {
            layers.selection().selectAll();
        }
    }

    /** Scrolls to the cell on which the keyboard works. */
    void reveal() {
        layers.viewport().moveCellPositionIntoViewport(selection.anchor().getColumnPosition(),
                selection.anchor().getRowPosition());
    }

    Optional<Rectangle> anchorBounds() {
        return layers.bounds(table, selection.anchor().getColumnPosition(), selection.anchor().getRowPosition());
    }

    /** Returns where a cell is painted; nothing if it is scrolled off. */
    public Optional<Rectangle> bounds(SheetColumn column, int line) {
        return layers.bounds(table, layers.position(column), line);
    }

    /** Returns where the head of a line is painted, by which whole rows are selected; nothing if it is scrolled off. */
    public Optional<Rectangle> headBounds(int line) {
        return layers.bounds(table, layers.viewport().getOriginColumnPosition(), line)
                .map(cell -> new Rectangle(0, cell.y, layers.grid().getRowHeaderLayer().getWidth(), cell.height));
    }

    /** Scrolls until a cell can be seen. */
    public void scrollTo(SheetColumn column, int line) {
        layers.viewport().moveCellPositionIntoViewport(layers.position(column), line);
    }

    /** Opens the cell on which the keyboard works. */
    public void edit() {
        typing.open(null);
    }

    /** Takes over what is being typed. */
    public void finishTyping() {
        typing.leave();
    }

    /** Says something about the cell on which the keyboard works. */
    public void tell(String words) {
        typing.tell(words);
    }

    /** Returns what is said about a cell; empty for nothing. */
    public String note() {
        return typing.note();
    }
}
