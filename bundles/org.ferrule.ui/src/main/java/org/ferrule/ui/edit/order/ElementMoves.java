/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit.order;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

import org.eclipse.emf.common.command.CommandWrapper;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.look.ModelLabels;

/** Moves the selected elements of one list, each time by one command that can be undone. */
public final class ElementMoves {

    private final DocumentSession session;
    private final Supplier<List<EObject>> selection;

    /**
     * Creates the moves.
     *
     * @param selection asks for the elements that are selected; none if they cannot be moved, or not together
     */
    public ElementMoves(DocumentSession session, Supplier<List<EObject>> selection) {
        this.session = session;
        this.selection = selection;
    }

    /** Tells whether the selected elements can be moved at all. */
    public boolean isMovable() {
        return session.editable() && !selection.get().isEmpty();
    }

    /** Tells whether the selected elements can be moved up (-1) or down (1). */
    public boolean canStep(int by) {
        return isMovable() && place(by).isPresent();
    }

    private Optional<Integer> place(int by) {
        List<EObject> moved = selection.get();
        return Reordering.step(Reordering.siblings(moved.get(0)), moved, by);
    }

    /** Moves the selected elements up (-1) or down (1). */
    public void step(int by) {
        if (canStep(by)) {
            moveBefore(place(by).orElseThrow());
        }
    }

    /** Moves the selected elements in front of a place of their list; its size stands for the end. */
    public void moveBefore(int place) {
        List<EObject> moved = selection.get();
        List<EObject> siblings = Reordering.siblings(moved.get(0));
        Reordering.command(session.domain(), siblings, Reordering.together(siblings, moved, place)).ifPresent(
                command -> session.execute(new CommandWrapper("Move of " + ModelLabels.several(moved), "", command)));
    }

    /** Takes Alt with an arrow key. */
    public void press(Event event) {
        boolean arrow = event.keyCode == SWT.ARROW_UP || event.keyCode == SWT.ARROW_DOWN;
        if (arrow && (event.stateMask & SWT.MODIFIER_MASK) == SWT.ALT) {
            event.doit = false;
            step(event.keyCode == SWT.ARROW_UP ? -1 : 1);
        }
    }
}
