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
import org.eclipse.nebula.widgets.nattable.layer.cell.ILayerCell;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.ferrule.engine.chart.SolvedChart;
import org.ferrule.fit.matrix.CellChanges;
import org.ferrule.ui.fit.answer.VerdictImages;
import org.ferrule.ui.look.ThemeChange;

/** The matrix as a table: heads that stay, cells that scroll, a selected pair that stays selected. */
public final class MatrixTable {

    private final MatrixContent content;
    private final MatrixLayers layers;
    private final CellStates states;
    private final CellWords words = new CellWords();
    private final LocalResourceManager resources;
    private final NatTable table;
    private final VerdictImages glyphs;
    private final CellSelection selection;
    private final LineHandling lines;
    private Zoom zoom = Zoom.NORMAL;
    private CellMeasures measures;
    private CellTiles tiles;

    /** Creates the table. */
    public MatrixTable(Composite parent, MatrixContent content) {
        this.content = content;
        layers = new MatrixLayers(content);
        table = new NatTable(parent, layers.grid(), false);
        resources = new LocalResourceManager(JFaceResources.getResources(), table);
        states = new CellStates(content, table::redraw, this::repaintChanged);
        glyphs = new VerdictImages(table, SumPainter.GLYPH);
        table.addConfiguration(new DefaultNatTableStyleConfiguration());
        selection = new CellSelection(content, layers);
        lines = new LineHandling(this);
        table.addConfiguration(new MatrixBindings(this));
        table.configure();
        ThemeChange.follow(table, this::colour);
        table.addListener(SWT.Resize, event -> resized());
        table.addDisposeListener(event -> dispose());
    }

    /** The theme is another; what is painted in advance is painted anew. */
    private void colour() {
        table.setBackground(HeadColours.paper());
        zoom(zoom);
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

    /** Returns which cells are selected. */
    public CellSelection selection() {
        return selection;
    }

    /** Returns what can be done with lines. */
    public LineHandling lines() {
        return lines;
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
        selection.tell();
    }

    /** Shows what a filter or a sorting has changed. */
    public void refresh() {
        layers.refresh();
        selection.restore();
        table.redraw();
    }

    private void repaintSums() {
        if (content.sums().shown()) {
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

    /** Returns where the selected cell is painted in the widget; nothing if it is scrolled off. */
    public Optional<Rectangle> selectedBounds() {
        OptionalInt row = selection.position(content.rowSide());
        OptionalInt column = selection.position(content.rowSide().other());
        return row.isPresent() && column.isPresent() ? boundsOf(row.getAsInt(), column.getAsInt()) : Optional.empty();
    }

    /** Returns the selected cells with their heads, as text with tabs between. */
    public String selectedText() {
        return new MatrixText(content, words).of(layers.selection());
    }

    /** Whether a place of the table shows the sum of a line. */
    boolean isSum(int x, int y) {
        ILayerCell cell = table.getCellByPosition(table.getColumnPositionByX(x), table.getRowPositionByY(y));
        return cell != null && isSum(cell);
    }

    /** The sum of a line stands in the last of its heads, next to the cells. */
    private boolean isSum(ILayerCell cell) {
        ShownCells shown = layers.shown(table);
        int column = cell.getOriginColumnPosition() - shown.headColumns();
        int row = cell.getOriginRowPosition() - shown.headRows();
        return content.sums().shown() && (column == -1 && row >= 0 || row == -1 && column >= 0);
    }

    /** The position of the first row, or column, that can be seen. */
    int firstShown(boolean rows) {
        ShownCells shown = layers.shown(table);
        return (rows ? shown.rows() : shown.columns()).findFirst().orElse(0);
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
