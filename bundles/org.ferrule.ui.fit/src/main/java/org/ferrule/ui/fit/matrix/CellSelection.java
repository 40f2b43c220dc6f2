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
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.eclipse.nebula.widgets.nattable.coordinate.PositionCoordinate;
import org.eclipse.nebula.widgets.nattable.selection.event.ISelectionEvent;
import org.ferrule.ui.fit.answer.AskedPair;
import org.ferrule.ui.fit.answer.ComparedPairs;

/** Which cells are selected. They are known by their lines, so that they stay selected when these stand elsewhere. */
public final class CellSelection {

    /** Of more selected cells only one stays selected when lines move. */
    private static final int MOST_KEPT = 400;

    private final MatrixContent content;
    private final MatrixLayers layers;
    private final Map<Side, String> keys = new EnumMap<>(Side.class);
    private List<Map<Side, String>> cells = List.of();
    private Runnable listener = () -> {
    };
    private List<AskedPair> told = List.of();
    private boolean restoring;

    CellSelection(MatrixContent content, MatrixLayers layers) {
        this.content = content;
        this.layers = layers;
        layers.selection().addLayerListener(event -> {
            if (event instanceof ISelectionEvent) {
                note();
            }
        });
    }

    /** Sets what is to be done when other pairs are selected, or the selected ones are answered anew. */
    public void onChange(Runnable work) {
        listener = work;
    }

    /** Tells of the selected pairs, unless they are the same with the same answers. */
    void tell() {
        List<AskedPair> pairs = pairs();
        if (!pairs.equals(told)) {
            told = pairs;
            listener.run();
        }
    }

    private void note() {
        PositionCoordinate anchor = layers.selection().getSelectionAnchor();
        boolean selected = anchor.getColumnPosition() >= 0 && anchor.getRowPosition() >= 0;
        if (selected && !restoring) {
            keys.put(content.rowSide(), content.rows().line(anchor.getRowPosition()).key());
            keys.put(content.rowSide().other(), content.columns().line(anchor.getColumnPosition()).key());
            cells = selectedCells();
            tell();
        }
    }

    private List<Map<Side, String>> selectedCells() {
        long most = (long) layers.selection().getSelectedRowCount()
                * layers.selection().getSelectedColumnPositions().length;
        return most > MOST_KEPT ? List.of() : Stream.of(layers.selection().getSelectedCellPositions())
                .filter(cell -> cell.rowPosition < content.rows().size()
                        && cell.columnPosition < content.columns().size())
                .map(cell -> Map.of(content.rowSide(), content.rows().line(cell.rowPosition).key(),
                        content.rowSide().other(), content.columns().line(cell.columnPosition).key()))
                .toList();
    }

    /** Selects the same lines again after they have been shown elsewhere. */
    void restore() {
        if (!keys.isEmpty()) {
            restoring = true;
            if (select(keys.get(Side.OUTER), keys.get(Side.INNER)) && cells.size() > 1) {
                PositionCoordinate anchor = layers.selection().getSelectionAnchor();
                cells.stream().filter(cell -> !cell.equals(keys)).forEach(this::add);
                layers.selection().moveSelectionAnchor(anchor.columnPosition, anchor.rowPosition);
            }
            restoring = false;
        }
    }

    private void add(Map<Side, String> cell) {
        OptionalInt row = content.rows().position(cell.get(content.rowSide()));
        OptionalInt column = content.columns().position(cell.get(content.rowSide().other()));
        if (row.isPresent() && column.isPresent()) {
            layers.selection().selectCell(column.getAsInt(), row.getAsInt(), false, true);
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
        note();
        return true;
    }

    /** Selects the line with a key, where the selection stands on the other side, and scrolls to it. */
    public boolean goTo(Side side, String key) {
        return goTo(side, key, keys);
    }

    /**
     * Selects the line with a key and scrolls to it.
     *
     * @param from the selection from which to start: its line on the other side stays
     */
    public boolean goTo(Side side, String key, Map<Side, String> from) {
        MatrixAxis other = content.axis(side.other());
        String former = from.get(side.other());
        if (other.size() == 0) {
            return false;
        }
        String stays = former != null && other.position(former).isPresent() ? former : other.line(0).key();
        return side == Side.OUTER ? select(key, stays) : select(stays, key);
    }

    /** Returns the keys of the selected lines; none before something is selected. */
    public Map<Side, String> keys() {
        return Map.copyOf(keys);
    }

    /** Returns where the selected line of a side is shown; nothing if it is not. */
    public OptionalInt position(Side side) {
        return keys.isEmpty() ? OptionalInt.empty() : content.axis(side).position(keys.get(side));
    }

    /** Returns where the lines of a side are shown of which cells are selected, in their order. */
    public List<Integer> positions(Side side) {
        IntStream selected = side == content.rowSide()
                ? layers.selection().getSelectedRowPositions().stream().flatMapToInt(
                        range -> IntStream.range(range.start, range.end))
                : IntStream.of(layers.selection().getSelectedColumnPositions());
        return selected.filter(position -> position < content.axis(side).size()).sorted().boxed().toList();
    }

    /** Returns the pair whose cell is selected; nothing if it is not shown. */
    public Optional<AskedPair> pair() {
        OptionalInt row = position(content.rowSide());
        OptionalInt column = position(content.rowSide().other());
        return row.isPresent() && column.isPresent() ? content.pairAt(row.getAsInt(), column.getAsInt())
                : Optional.empty();
    }

    /**
     * Returns the pairs of all selected cells, the one that was selected first first; only that one where so many are
     * selected that nobody wants to compare them.
     */
    public List<AskedPair> pairs() {
        List<AskedPair> pairs = new ArrayList<>(pair().stream().toList());
        boolean few = layers.selection().getSelectedRowCount() <= ComparedPairs.MOST
                && layers.selection().getSelectedColumnPositions().length <= ComparedPairs.MOST;
        PositionCoordinate[] cells = few ? layers.selection().getSelectedCellPositions() : new PositionCoordinate[0];
        if (cells.length > 1 && cells.length <= ComparedPairs.MOST) {
            Stream.of(cells).flatMap(cell -> content.pairAt(cell.rowPosition, cell.columnPosition).stream())
                    .filter(pair -> !pairs.contains(pair)).forEach(pairs::add);
        }
        return pairs;
    }
}
