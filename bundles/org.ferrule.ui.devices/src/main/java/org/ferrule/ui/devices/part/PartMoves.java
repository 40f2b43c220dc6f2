/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.part;

import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.devices.table.RowTable;

/**
 * Moves the selected parts of a list, by dragging, by Alt with the arrow keys, or step by step; several stand together
 * then. Inherited parts stand where their line has them, and cannot be moved.
 */
final class PartMoves {

    private final DocumentSession session;
    private final RowTable<Shown> table;

    PartMoves(DocumentSession session, RowTable<Shown> table) {
        this.session = session;
        this.table = table;
        RowDrag.in(table.control(), () -> isMovable() && table.control().getSortColumn() == null, this::moveBefore);
    }

    /** Tells whether the selected parts can be moved up (-1) or down (1). */
    boolean canStep(int by) {
        return isMovable() && place(by).isPresent();
    }

    private boolean isMovable() {
        List<Shown> selection = table.selection();
        return session.editable() && !selection.isEmpty() && selection.stream().noneMatch(Shown::isInherited);
    }

    private List<EObject> selected() {
        return table.selection().stream().map(row -> row.own().orElseThrow()).toList();
    }

    /** Before which of the siblings the selected ones stand after a step; nothing where there is no room for one. */
    private Optional<Integer> place(int by) {
        List<EObject> siblings = PartEdits.siblings(selected().get(0));
        List<Integer> places = selected().stream().map(siblings::indexOf).sorted().toList();
        int before = by < 0 ? places.get(0) - 1 : places.get(places.size() - 1) + 2;
        return Optional.of(before).filter(place -> place >= 0 && place <= siblings.size());
    }

    /** Moves the selected parts up (-1) or down (1). */
    void step(int by) {
        if (canStep(by)) {
            new PartEdits(session).move(selected(), place(by).orElseThrow());
        }
    }

    /** Moves the selected parts before a row of the table; those that are only inherited stay where they are. */
    private void moveBefore(int row) {
        List<EObject> siblings = PartEdits.siblings(selected().get(0));
        int before = table.rows().stream().skip(row).flatMap(other -> other.own().stream()).findFirst()
                .map(siblings::indexOf).orElse(siblings.size());
        new PartEdits(session).move(selected(), before);
    }

    /** Takes Alt with an arrow key. */
    void press(Event event) {
        boolean arrow = event.keyCode == SWT.ARROW_UP || event.keyCode == SWT.ARROW_DOWN;
        if (arrow && (event.stateMask & SWT.MODIFIER_MASK) == SWT.ALT) {
            event.doit = false;
            step(event.keyCode == SWT.ARROW_UP ? -1 : 1);
        }
    }
}
