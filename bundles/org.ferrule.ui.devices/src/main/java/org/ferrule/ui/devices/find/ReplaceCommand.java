/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.find;

import java.util.List;
import java.util.function.Supplier;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.edit.command.SetCommand;
import org.ferrule.ui.devices.sheet.StepCommand;
import org.ferrule.ui.document.DocumentSession;

/** Replaces in all chosen fields, by one command that can be undone. */
public final class ReplaceCommand {

    private final DocumentSession session;

    /** Creates a replacing in a document. */
    public ReplaceCommand(DocumentSession session) {
        this.session = session;
    }

    /** Replaces the hits. */
    public void run(List<Hit> hits) {
        List<Supplier<Command>> steps = hits.stream().filter(Hit::replaceable).map(this::step).toList();
        if (!steps.isEmpty()) {
            session.execute(new StepCommand(
                    "Replacement in " + steps.size() + (steps.size() == 1 ? " field" : " fields"), steps));
        }
    }

    private Supplier<Command> step(Hit hit) {
        Object value = hit.reading().value() == null ? SetCommand.UNSET_VALUE : hit.reading().value();
        return () -> SetCommand.create(session.domain(), hit.object(), hit.feature(), value);
    }
}
