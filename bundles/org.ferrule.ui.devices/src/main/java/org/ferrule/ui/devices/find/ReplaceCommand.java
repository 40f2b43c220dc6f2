/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.find;

import java.util.ArrayList;
import java.util.Collections;
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
        List<Hit> wanted = new ArrayList<>(hits.stream().filter(Hit::replaceable).toList());
        // an entry that is left empty goes, and those behind it move up: from the last on that disturbs none
        Collections.reverse(wanted);
        List<Supplier<Command>> steps = wanted.stream().map(this::step).toList();
        if (!steps.isEmpty()) {
            session.execute(new StepCommand(
                    "Replacement in " + steps.size() + (steps.size() == 1 ? " field" : " fields"), steps));
        }
    }

    private Supplier<Command> step(Hit hit) {
        return () -> {
            Object value = hit.index() == Hit.WHOLE ? hit.reading().value() : entries(hit);
            return SetCommand.create(session.domain(), hit.object(), hit.feature(),
                    value == null ? SetCommand.UNSET_VALUE : value);
        };
    }

    /** All entries of the field with the other one among them; null for none. */
    private static Object entries(Hit hit) {
        List<Object> entries = new ArrayList<>((List<?>) hit.object().eGet(hit.feature()));
        if (hit.reading().value() == null) {
            entries.remove(hit.index());
        } else {
            entries.set(hit.index(), hit.reading().value());
        }
        return entries.isEmpty() ? null : entries;
    }
}
