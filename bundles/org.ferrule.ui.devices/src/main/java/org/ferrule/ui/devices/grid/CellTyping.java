/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.grid;

import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.jface.bindings.keys.KeyStroke;
import org.eclipse.jface.fieldassist.ContentProposalAdapter;
import org.eclipse.jface.fieldassist.TextContentAdapter;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.ferrule.ui.devices.sheet.CellChange;
import org.ferrule.ui.devices.sheet.CellReading;
import org.ferrule.ui.devices.sheet.SheetColumn;
import org.ferrule.ui.devices.sheet.SheetEdits;
import org.ferrule.ui.devices.sheet.SheetLine;
import org.ferrule.ui.devices.sheet.SheetRow;
import org.ferrule.ui.devices.sheet.UsedWords;
import org.ferrule.ui.document.DocumentSession;

/**
 * Typing into a cell. Enter and Tab take over what was typed, Escape gives it up; what cannot be read stays in the cell,
 * marked, and out of the document. Control and Space proposes words.
 */
final class CellTyping {

    private final SheetGrid grid;
    private final DocumentSession session;
    private final CellNote note;
    private final CellMeanings meanings = new CellMeanings();
    private Text text;
    private ContentProposalAdapter proposals;
    private SheetRow row;
    private SheetColumn column;
    private String before;

    CellTyping(SheetGrid grid, DocumentSession session) {
        this.grid = grid;
        this.session = session;
        note = new CellNote(grid.control());
    }

    /** Opens the cell on which the keyboard works; with what it holds if nothing is typed yet. */
    void open(String typed) {
        close();
        Optional<SheetRow> wanted = grid.selection().line().flatMap(SheetLine::row);
        Optional<SheetColumn> place = grid.selection().column();
        if (wanted.isPresent() && place.isPresent() && session.editable()) {
            grid.reveal();
            open(wanted.get(), place.get(), typed);
        }
    }

    private void open(SheetRow cellRow, SheetColumn cellColumn, String typed) {
        Optional<Rectangle> bounds = grid.anchorBounds();
        Optional<String> locked = cellColumn.locked(cellRow);
        if (bounds.isEmpty() || locked.isPresent()) {
            bounds.ifPresent(area -> locked.ifPresent(reason -> note.tell(area, reason)));
            return;
        }
        row = cellRow;
        column = cellColumn;
        before = column.inherited(row) ? "" : column.text(row);
        text = new Text(grid.control(), SWT.SINGLE | SWT.BORDER);
        text.setFont(GridText.font());
        if (column.inherited(row)) {
            text.setMessage(column.text(row));
        }
        place(bounds.get());
        text.setText(typed == null ? grid.drafts().get(row, column).orElse(before) : typed);
        if (typed == null) {
            text.selectAll();
        } else {
            text.setSelection(typed.length());
        }
        listen();
        text.setFocus();
        typed();
    }

    private void place(Rectangle cell) {
        int height = Math.max(cell.height, text.computeSize(SWT.DEFAULT, SWT.DEFAULT).y);
        text.setBounds(cell.x - 1, cell.y - (height - cell.height) / 2, Math.max(cell.width + 1, 90), height);
    }

    private void listen() {
        text.addListener(SWT.Modify, event -> typed());
        text.addListener(SWT.Traverse, this::traverse);
        text.addListener(SWT.KeyDown, this::vertical);
        text.addListener(SWT.FocusOut, event -> leave());
        List<String> words = UsedWords.of(column, grid.listing().all());
        if (!words.isEmpty()) {
            proposals = new ContentProposalAdapter(text, new TextContentAdapter(), new WordProposals(words),
                    KeyStroke.getInstance(SWT.MOD1, ' '), null);
            proposals.setProposalAcceptanceStyle(ContentProposalAdapter.PROPOSAL_REPLACE);
        }
    }

    /** Returns whether a cell is being typed into. */
    boolean isOpen() {
        return text != null && !text.isDisposed();
    }

    private EAttribute attribute() {
        return column.attribute().orElseThrow();
    }

    private CellReading reading() {
        return CellReading.of(attribute(), text.getText());
    }

    private boolean untouched() {
        return text.getText().equals(before);
    }

    private void typed() {
        CellReading reading = reading();
        session.draft(this, !untouched() && reading.readable());
        if (reading.readable()) {
            note.tell(text.getBounds(), meanings.of(attribute(), reading));
        } else {
            note.error(text.getBounds(), reading.error().orElseThrow());
        }
    }

    private void traverse(Event event) {
        if (proposals != null && proposals.isProposalPopupOpen()) {
            event.doit = false;
            return;
        }
        switch (event.detail) {
            case SWT.TRAVERSE_RETURN -> enter();
            case SWT.TRAVERSE_TAB_NEXT -> leaveTo(1, 0);
            case SWT.TRAVERSE_TAB_PREVIOUS -> leaveTo(-1, 0);
            case SWT.TRAVERSE_ESCAPE -> giveUp();
            default -> {
                return;
            }
        }
        event.doit = false;
    }

    private void vertical(Event event) {
        boolean popup = proposals != null && proposals.isProposalPopupOpen();
        if (!popup && (event.keyCode == SWT.ARROW_DOWN || event.keyCode == SWT.ARROW_UP)) {
            event.doit = false;
            leaveTo(0, event.keyCode == SWT.ARROW_DOWN ? 1 : -1);
        }
    }

    private void enter() {
        if (reading().readable()) {
            leaveTo(0, 1);
        } else {
            note.error(text.getBounds(), reading().error().orElseThrow());
        }
    }

    private void leaveTo(int right, int down) {
        leave();
        grid.selection().move(right, down);
        grid.control().setFocus();
    }

    private void giveUp() {
        grid.drafts().drop(row, column);
        close();
        grid.control().setFocus();
    }

    /** Takes over what was typed, or keeps it beside the document if it cannot be read. */
    void leave() {
        if (!isOpen()) {
            return;
        }
        SheetRow edited = row;
        SheetColumn changed = column;
        String typed = text.getText();
        CellReading reading = reading();
        boolean same = untouched();
        close();
        grid.drafts().drop(edited, changed);
        if (!reading.readable()) {
            grid.drafts().put(edited, changed, typed);
        } else if (!same) {
            new SheetEdits(session).apply(List.of(new CellChange(edited, changed, reading.value())));
        }
        grid.redraw();
    }

    private void close() {
        note.hide();
        if (isOpen()) {
            Text closed = text;
            text = null;
            proposals = null;
            session.draft(this, false);
            closed.dispose();
        }
    }

    /** Gives up the text that was left in a cell because it could not be read. */
    void forget(SheetRow cellRow, SheetColumn cellColumn) {
        grid.drafts().drop(cellRow, cellColumn);
        note.hide();
        grid.redraw();
    }

    /** Says what is wrong with the cell on which the keyboard works, if something was left in it. */
    void explain() {
        Optional<SheetRow> at = grid.selection().line().flatMap(SheetLine::row);
        Optional<SheetColumn> in = grid.selection().column();
        Optional<String> draft = at.isPresent() && in.isPresent() ? grid.drafts().get(at.get(), in.get())
                : Optional.empty();
        Optional<Rectangle> bounds = grid.anchorBounds();
        if (draft.isPresent() && bounds.isPresent()) {
            note.error(bounds.get(),
                    CellReading.of(in.get().attribute().orElseThrow(), draft.get()).error().orElse(""));
        } else if (!isOpen()) {
            note.hide();
        }
    }

    /** Says something about the cell on which the keyboard works. */
    void tell(String words) {
        grid.anchorBounds().ifPresent(area -> note.tell(area, words));
    }

    /** Returns what is said about a cell; empty for nothing. */
    String note() {
        return note.text();
    }
}
