/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

import java.util.Optional;
import java.util.OptionalInt;

import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.nebula.widgets.nattable.config.DefaultNatTableStyleConfiguration;
import org.eclipse.nebula.widgets.nattable.coordinate.PositionCoordinate;
import org.eclipse.nebula.widgets.nattable.layer.cell.ILayerCell;
import org.eclipse.nebula.widgets.nattable.selection.event.ISelectionEvent;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.ferrule.engine.chart.SolvedChart;
import org.ferrule.fit.matrix.CellChanges;
import org.ferrule.ui.fit.answer.AskedPair;
import org.ferrule.ui.fit.answer.VerdictImages;

/** The matrix as a table: heads that stay, cells that scroll, a selected pair that stays selected. */
public final class MatrixTable {

    private final MatrixContent content;
    private final MatrixLayers layers;
    private final CellStates states;
    private final CellWords words = new CellWords();
    private final LocalResourceManager resources;
    private final NatTable table;
    private final VerdictImages glyphs;
    private Zoom zoom = Zoom.NORMAL;
    private CellTiles tiles;
    private Runnable selectionListener = () -> {
    };
    private String outerKey;
    private String innerKey;
    private Optional<AskedPair> told = Optional.empty();
    private boolean restoring;

    /** Creates the table. */
    public MatrixTable(Composite parent, MatrixContent content) {
        this.content = content;
        layers = new MatrixLayers(content);
        table = new NatTable(parent, layers.grid(), false);
        resources = new LocalResourceManager(JFaceResources.getResources(), table);
        states = new CellStates(content, table::redraw, this::repaintChanged);
        glyphs = new VerdictImages(table, SumPainter.GLYPH);
        table.addConfiguration(new DefaultNatTableStyleConfiguration());
        table.addConfiguration(new MatrixBindings(this));
        table.setBackground(HeadColours.paper());
        table.configure();
        zoom(zoom);
        layers.selection().addLayerListener(event -> {
            if (event instanceof ISelectionEvent) {
                noteSelection();
            }
        });
        table.addDisposeListener(event -> dispose());
    }

    private void dispose() {
        states.dispose();
        tiles.dispose();
    }

    /** Returns the widget. */
    public NatTable control() {
        return table;
    }

    /** Returns what it shows. */
    public MatrixContent content() {
        return content;
    }

    /** Sets what is to be done when another pair is selected, or the selected one is answered anew. */
    public void onSelect(Runnable listener) {
        selectionListener = listener;
    }

    /** Returns how large cells are. */
    public Zoom zoom() {
        return zoom;
    }

    /** Makes cells smaller or larger. */
    public void zoom(Zoom next) {
        zoom = next;
        CellMeasures measures = new CellMeasures(resources, zoom);
        if (tiles != null) {
            tiles.dispose();
        }
        tiles = new CellTiles(table.getDisplay(), measures, zoom.saysWords());
        layers.measure(measures);
        new MatrixPaint(content, measures, new VerdictCells(content, states, words, measures, tiles,
                zoom.saysWords()), new SumPainter(measures, glyphs), this::visible).install(table.getConfigRegistry());
        refresh();
    }

    /** The part of the table in which cells scroll. */
    private Rectangle visible() {
        Rectangle all = table.getClientArea();
        int left = layers.grid().getRowHeaderLayer().getWidth();
        int top = layers.grid().getColumnHeaderLayer().getHeight();
        return new Rectangle(left, top, Math.max(0, all.width - left), Math.max(0, all.height - top));
    }

    /** The user prefers other units. */
    public void unitsChanged() {
        words.unitsChanged();
        table.redraw();
    }

    /** Another answer is awaited. */
    public void await() {
        states.await();
    }

    /** Shows other answers. */
    public void show(SolvedChart solved, boolean onlyChanges) {
        boolean others = content.show(solved, onlyChanges);
        boolean allAnew = states.arrived(onlyChanges ? solved.matrix().changes() : CellChanges.NONE);
        if (others || !onlyChanges) {
            refresh();
        } else if (allAnew) {
            table.redraw();
        } else {
            repaintChanged();
            repaintSums();
        }
        tellSelection();
    }

    /** Tells of the selected pair, unless it is the same with the same answer. */
    private void tellSelection() {
        Optional<AskedPair> pair = selected();
        if (!pair.equals(told)) {
            told = pair;
            selectionListener.run();
        }
    }

    /** Shows what a filter or a sorting has changed. */
    public void refresh() {
        layers.refresh();
        restoreSelection();
        table.redraw();
    }

    private void repaintSums() {
        if (content.showsSums()) {
            Rectangle cells = visible();
            table.redraw(0, cells.y, cells.x, cells.height, false);
            table.redraw(cells.x, 0, cells.width, cells.y, false);
        }
    }

    /** Shows the sum of its verdicts at each line, or not. */
    public void showSums(boolean shown) {
        content.showSums(shown);
        refresh();
    }

    private void repaintChanged() {
        new MatrixRepaint(table, layers.viewport(), states).run();
    }

    private void noteSelection() {
        PositionCoordinate anchor = layers.selection().getSelectionAnchor();
        boolean selected = anchor.getColumnPosition() >= 0 && anchor.getRowPosition() >= 0;
        if (selected && !restoring) {
            outerKey = content.axis(Side.OUTER).line(anchor.getRowPosition()).key();
            innerKey = content.axis(Side.INNER).line(anchor.getColumnPosition()).key();
            tellSelection();
        }
    }

    private void restoreSelection() {
        if (outerKey != null) {
            restoring = true;
            select(outerKey, innerKey);
            restoring = false;
        }
    }

    /** Selects the cell of two lines and scrolls to it; tells whether it is shown. */
    public boolean select(String outer, String inner) {
        OptionalInt row = content.axis(Side.OUTER).position(outer);
        OptionalInt column = content.axis(Side.INNER).position(inner);
        if (row.isEmpty() || column.isEmpty()) {
            return false;
        }
        layers.selection().setSelectedCell(column.getAsInt(), row.getAsInt());
        layers.viewport().moveCellPositionIntoViewport(column.getAsInt(), row.getAsInt());
        noteSelection();
        return true;
    }

    /** Selects the line with a key, where the selection stands on the other side, and scrolls to it. */
    public boolean goTo(Side side, String key) {
        MatrixAxis other = content.axis(side.other());
        String former = side == Side.OUTER ? innerKey : outerKey;
        boolean shown = former != null && other.position(former).isPresent();
        if (other.size() == 0) {
            return false;
        }
        String stays = shown ? former : other.line(0).key();
        return side == Side.OUTER ? select(key, stays) : select(stays, key);
    }

    /** Returns the pair whose cell is selected; nothing if it is not shown. */
    public Optional<AskedPair> selected() {
        OptionalInt row = outerKey == null ? OptionalInt.empty() : content.axis(Side.OUTER).position(outerKey);
        OptionalInt column = innerKey == null ? OptionalInt.empty() : content.axis(Side.INNER).position(innerKey);
        return row.isPresent() && column.isPresent() ? Optional.of(content.pair(row.getAsInt(), column.getAsInt()))
                : Optional.empty();
    }

    /** Returns where the selected cell is painted in the widget; nothing if it is scrolled off. */
    public Optional<Rectangle> selectedBounds() {
        OptionalInt row = outerKey == null ? OptionalInt.empty() : content.axis(Side.OUTER).position(outerKey);
        OptionalInt column = innerKey == null ? OptionalInt.empty() : content.axis(Side.INNER).position(innerKey);
        return row.isPresent() && column.isPresent() ? boundsOf(row.getAsInt(), column.getAsInt()) : Optional.empty();
    }

    /** Returns the selected cells with their heads, as text with tabs between. */
    public String selectedText() {
        return new MatrixText(content, words).of(layers.selection());
    }

    /** Sorts by the line under a place of a head. */
    void sortAt(Side side, int x, int y) {
        int position = positionAt(side, x, y);
        boolean other = position >= 0
                && (isSum(x, y) ? content.sortBySums(side) : content.sortBy(side, position));
        if (other) {
            refresh();
        }
        table.redraw();
    }

    private boolean isSum(int x, int y) {
        ILayerCell cell = table.getCellByPosition(table.getColumnPositionByX(x), table.getRowPositionByY(y));
        return cell != null && cell.getDataValue() instanceof VerdictSum;
    }

    /** Sorts the lines of a side by their sums, the other way round, or no more; without sums they are shown first. */
    public void sortBySums(Side side) {
        content.showSums(true);
        content.sortBySums(side);
        refresh();
    }

    /** Returns where the line under a place of the table is shown, or a negative number. */
    public int positionAt(Side side, int x, int y) {
        int position = side == Side.OUTER ? table.getRowIndexByPosition(table.getRowPositionByY(y))
                : table.getColumnIndexByPosition(table.getColumnPositionByX(x));
        boolean isHead = side == Side.OUTER ? table.getRowPositionByY(y) < headRows()
                : table.getColumnPositionByX(x) < headColumns();
        return isHead || position >= content.axis(side).size() ? -1 : position;
    }

    private int headRows() {
        return table.getRowCount() - layers.viewport().getRowCount();
    }

    private int headColumns() {
        return table.getColumnCount() - layers.viewport().getColumnCount();
    }

    /** Returns where the cell of two shown lines is painted in the widget; nothing if it is scrolled off. */
    public Optional<Rectangle> boundsOf(int row, int column) {
        return MatrixRepaint.bounds(table, layers.viewport(), row, column);
    }
}
