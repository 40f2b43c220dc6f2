/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.card;

import java.util.Optional;

import org.eclipse.jface.window.ToolTip;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;
import org.ferrule.ui.fit.answer.AskedPair;
import org.ferrule.ui.fit.matrix.MatrixTable;
import org.ferrule.ui.fit.matrix.Side;

/** Explains the cell under the pointer, or by a key the selected one, on a card beside it. */
public final class CellCard extends ToolTip {

    private static final int DELAY_MS = 600;
    private static final int BESIDE = 4;

    private final MatrixTable table;
    private final Listener hiding = event -> hide();
    private CardContent content;
    private Place still;
    private boolean asked;

    /** Where a cell is shown. */
    private record Place(int row, int column) {
    }

    /** Creates a card for the cells of a matrix. */
    public CellCard(MatrixTable table) {
        super(table.control(), RECREATE, false);
        this.table = table;
        setPopupDelay(DELAY_MS);
        setHideOnMouseDown(true);
        setShift(new Point(BESIDE, BESIDE));
        table.control().addListener(SWT.MouseDown, event -> still = place(event).orElse(null));
        table.control().addListener(SWT.MouseMove, this::moved);
    }

    private void moved(Event event) {
        if (still != null && !place(event).equals(Optional.of(still))) {
            still = null;
        }
    }

    /** Shows the card of the selected cell, if it is in sight. */
    public void showSelected() {
        asked = true;
        table.selectedBounds().ifPresent(
                cell -> show(new Point(cell.x + cell.width / 2, cell.y + cell.height / 2)));
        asked = false;
    }

    private Optional<Place> place(Event event) {
        int row = table.positionAt(Side.OUTER, event.x, event.y);
        int column = table.positionAt(Side.INNER, event.x, event.y);
        return row < 0 || column < 0 ? Optional.empty() : Optional.of(new Place(row, column));
    }

    @Override
    protected Object getToolTipArea(Event event) {
        return place(event).orElse(null);
    }

    /** Who clicks wants to work: the card comes after a click only when the pointer goes to another cell. */
    @Override
    protected boolean shouldCreateToolTip(Event event) {
        boolean wanted = asked || !place(event).equals(Optional.ofNullable(still));
        return wanted && place(event).flatMap(this::pair).isPresent() && super.shouldCreateToolTip(event);
    }

    private Optional<AskedPair> pair(Place place) {
        return table.content().pairAt(place.row(), place.column());
    }

    /** The card stands beside its cell, and covers it only where there is no other room. */
    @Override
    public Point getLocation(Point size, Event event) {
        Optional<Rectangle> bounds = place(event).flatMap(place -> table.boundsOf(place.row(), place.column()));
        if (bounds.isEmpty()) {
            return super.getLocation(size, event);
        }
        Rectangle cell = Display.getCurrent().map(table.control(), null, bounds.get());
        Rectangle screen = table.control().getMonitor().getClientArea();
        boolean below = cell.y + cell.height + BESIDE + size.y <= screen.y + screen.height;
        int y = below ? cell.y + cell.height + BESIDE : Math.max(screen.y, cell.y - size.y - BESIDE);
        int x = Math.max(screen.x, Math.min(cell.x, screen.x + screen.width - size.x));
        return new Point(x, y);
    }

    @Override
    protected Composite createToolTipContentArea(Event event, Composite parent) {
        content = new CardContent(parent, place(event).flatMap(this::pair).orElseThrow());
        Display display = parent.getDisplay();
        display.addFilter(SWT.KeyDown, hiding);
        content.control().addListener(SWT.Dispose, disposed -> {
            content = null;
            display.removeFilter(SWT.KeyDown, hiding);
        });
        return content.control();
    }

    /** Returns what the card says while it is shown. */
    public Optional<String> text() {
        return Optional.ofNullable(content).map(CardContent::text);
    }
}
