/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.nebula.widgets.nattable.config.DefaultNatTableStyleConfiguration;
import org.eclipse.nebula.widgets.nattable.coordinate.PositionCoordinate;
import org.eclipse.nebula.widgets.nattable.layer.cell.ILayerCell;
import org.eclipse.nebula.widgets.nattable.selection.event.ISelectionEvent;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.ferrule.engine.chart.SolvedChart;
import org.ferrule.fit.matrix.CellChanges;
import org.ferrule.ui.fit.answer.AskedPair;
import org.ferrule.ui.fit.answer.ComparedPairs;
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
    private CellMeasures measures;
    private CellTiles tiles;
    private Runnable selectionListener = () -> {
    };
    private final Map<Side, String> keys = new EnumMap<>(Side.class);
    private List<AskedPair> told = List.of();
    private boolean restoring;
    private LineMover lineMover = (side, key, other, after) -> {
    };

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
        table.addListener(SWT.Resize, event -> resized());
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
        measures = new CellMeasures(resources, zoom);
        if (tiles != null) {
            tiles.dispose();
        }
        tiles = new CellTiles(table.getDisplay(), measures, zoom.saysWords());
        measure();
        SumPainter sums = new SumPainter(measures, glyphs);
        new MatrixPaint(content, measures, new VerdictCells(content, states, words, measures, tiles, sums,
                zoom.saysWords()), sums, this::isSum, this::visible).install(table.getConfigRegistry());
        refresh();
    }

    private void resized() {
        int before = layers.grid().getRowHeaderLayer().getWidth();
        measure();
        if (layers.grid().getRowHeaderLayer().getWidth() != before) {
            refresh();
        }
    }

    /** Another width of the table may leave more or less room for heads. */
    private void measure() {
        layers.measure(measures, table.getClientArea().width);
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

    /** Tells of the selected pairs, unless they are the same with the same answers. */
    private void tellSelection() {
        List<AskedPair> pairs = selectedPairs();
        if (!pairs.equals(told)) {
            told = pairs;
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
        new MatrixRepaint(table, layers.shown(table), states).run();
    }

    private void noteSelection() {
        PositionCoordinate anchor = layers.selection().getSelectionAnchor();
        boolean selected = anchor.getColumnPosition() >= 0 && anchor.getRowPosition() >= 0;
        if (selected && !restoring) {
            keys.put(content.rowSide(), content.rows().line(anchor.getRowPosition()).key());
            keys.put(content.rowSide().other(), content.columns().line(anchor.getColumnPosition()).key());
            tellSelection();
        }
    }

    private void restoreSelection() {
        if (!keys.isEmpty()) {
            restoring = true;
            select(keys.get(Side.OUTER), keys.get(Side.INNER));
            restoring = false;
        }
    }

    /** Selects the cell of two lines and scrolls to it; tells whether it is shown. */
    public boolean select(String outer, String inner) {
        OptionalInt row = content.rows().position(content.rowSide() == Side.OUTER ? outer : inner);
        OptionalInt column = content.columns().position(content.rowSide() == Side.OUTER ? inner : outer);
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
        String former = keys.get(side.other());
        boolean shown = former != null && other.position(former).isPresent();
        if (other.size() == 0) {
            return false;
        }
        String stays = shown ? former : other.line(0).key();
        return side == Side.OUTER ? select(key, stays) : select(stays, key);
    }

    /** Returns where the selected line of a side is shown; nothing if it is not. */
    public OptionalInt selectedPosition(Side side) {
        return keys.isEmpty() ? OptionalInt.empty() : content.axis(side).position(keys.get(side));
    }

    /** Returns the pair whose cell is selected; nothing if it is not shown. */
    public Optional<AskedPair> selected() {
        OptionalInt row = selectedPosition(content.rowSide());
        OptionalInt column = selectedPosition(content.rowSide().other());
        return row.isPresent() && column.isPresent() ? content.pairAt(row.getAsInt(), column.getAsInt())
                : Optional.empty();
    }

    /**
     * Returns the pairs of all selected cells, the one that was selected first first; only that one where so many are
     * selected that nobody wants to compare them.
     */
    public List<AskedPair> selectedPairs() {
        List<AskedPair> pairs = new ArrayList<>(selected().stream().toList());
        boolean few = layers.selection().getSelectedRowCount() <= ComparedPairs.MOST
                && layers.selection().getSelectedColumnPositions().length <= ComparedPairs.MOST;
        PositionCoordinate[] cells = few ? layers.selection().getSelectedCellPositions() : new PositionCoordinate[0];
        if (cells.length > 1 && cells.length <= ComparedPairs.MOST) {
            Stream.of(cells).flatMap(cell -> content.pairAt(cell.rowPosition, cell.columnPosition).stream())
                    .filter(pair -> !pairs.contains(pair)).forEach(pairs::add);
        }
        return pairs;
    }

    /** Returns where the selected cell is painted in the widget; nothing if it is scrolled off. */
    public Optional<Rectangle> selectedBounds() {
        OptionalInt row = selectedPosition(content.rowSide());
        OptionalInt column = selectedPosition(content.rowSide().other());
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
        return cell != null && isSum(cell);
    }

    /** The sum of a line stands in the last of its heads, next to the cells. */
    private boolean isSum(ILayerCell cell) {
        ShownCells shown = layers.shown(table);
        int column = cell.getOriginColumnPosition() - shown.headColumns();
        int row = cell.getOriginRowPosition() - shown.headRows();
        return content.showsSums() && (column == -1 && row >= 0 || row == -1 && column >= 0);
    }

    /** Sorts the lines of a side by their sums, the other way round, or no more; without sums they are shown first. */
    public void sortBySums(Side side) {
        content.showSums(true);
        content.sortBySums(side);
        refresh();
    }

    /** Folds the group under a place of a head, or unfolds it. */
    void foldAt(Side side, int x, int y) {
        int position = positionAt(side, x, y);
        if (position >= 0) {
            fold(side, position);
        }
    }

    /** Folds the group of a line, or unfolds it; then its first line is selected. */
    public void fold(Side side, int position) {
        boolean selected = selectedPosition(side).equals(OptionalInt.of(position));
        int first = content.axis(side).index(position);
        if (content.fold(side, position)) {
            refresh();
            if (selected) {
                goTo(side, content.axis(side).keyShowing(first));
            }
        }
    }

    /** The position of the first row, or column, that can be seen. */
    int firstShown(boolean rows) {
        ShownCells shown = layers.shown(table);
        return (rows ? shown.rows() : shown.columns()).findFirst().orElse(0);
    }

    /** Sets how lines are moved. */
    public void onMove(LineMover mover) {
        lineMover = mover;
    }

    /** Moves a line to where another is shown; that one and those between give way. */
    public void move(Side side, int from, int to) {
        MatrixAxis axis = content.axis(side);
        if (to >= 0 && to < axis.size() && !axis.isFolded(from) && !axis.isFolded(to)) {
            lineMover.move(side, axis.line(from).key(), axis.line(to).key(), to > from);
        }
    }

    /** Moves the selected line of a side by so many places. */
    public void moveSelected(Side side, int by) {
        selectedPosition(side).ifPresent(position -> move(side, position, position + by));
    }

    /** Pins the selected line of a side to the edge, or lets it go. */
    public void pinSelected(Side side) {
        selectedPosition(side).ifPresent(position -> pin(side, content.axis(side).line(position).key()));
    }

    /** Pins a line to the edge, or lets it go. */
    public void pin(Side side, String key) {
        content.pin(side, key);
        refresh();
    }

    /** Exchanges rows and columns. */
    public void transpose() {
        content.transpose();
        refresh();
    }

    /** Returns the side that is meant by the heads of rows, or of columns. */
    Side side(boolean rows) {
        return rows ? content.rowSide() : content.rowSide().other();
    }

    /** Returns where the line under a place of the table is shown, or a negative number. */
    public int positionAt(Side side, int x, int y) {
        boolean row = side == content.rowSide();
        int place = row ? table.getRowPositionByY(y) : table.getColumnPositionByX(x);
        int position = row ? table.getRowIndexByPosition(place) : table.getColumnIndexByPosition(place);
        ShownCells shown = layers.shown(table);
        boolean isHead = place < (row ? shown.headRows() : shown.headColumns());
        return isHead || position >= content.axis(side).size() ? -1 : position;
    }

    /** Returns where the cell of two shown lines is painted in the widget; nothing if it is scrolled off. */
    public Optional<Rectangle> boundsOf(int row, int column) {
        return layers.shown(table).bounds(row, column);
    }
}
