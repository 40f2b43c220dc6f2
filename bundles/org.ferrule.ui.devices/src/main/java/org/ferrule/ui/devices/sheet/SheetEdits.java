/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;

import org.eclipse.emf.common.command.Command;
import org.ferrule.ui.document.DocumentSession;

/** Changes cells, each time by one command that can be undone. */
public final class SheetEdits {

    private final DocumentSession session;

    /** Creates edits in a document. */
    public SheetEdits(DocumentSession session) {
        this.session = session;
    }

    /** Changes cells and tells how many; those that state their value already are left alone. */
    public int apply(List<CellChange> changes) {
        List<CellChange> real = changes.stream().filter(change -> !change.isNone()).toList();
        if (!real.isEmpty()) {
            session.execute(new StepCommand(label(real), steps(real)));
        }
        return real.size();
    }

    /** Returns the commands of changes, to be made one after the other. */
    public List<Supplier<Command>> steps(List<CellChange> changes) {
        List<Supplier<Command>> steps = new ArrayList<>();
        changes.forEach(change -> steps.add(
                () -> change.column().command(session.domain(), change.row().parts(), change.value())));
        return steps;
    }

    private static String label(List<CellChange> changes) {
        boolean oneColumn = changes.stream().map(CellChange::column).distinct().count() == 1;
        String what = oneColumn ? changes.get(0).column().title().toLowerCase(Locale.ENGLISH)
                : changes.size() + " values";
        return "Change of " + what + (oneColumn && changes.size() > 1 ? " of " + changes.size() + " entries" : "");
    }
}
