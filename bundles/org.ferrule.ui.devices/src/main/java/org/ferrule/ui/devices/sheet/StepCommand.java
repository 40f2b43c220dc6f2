/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.sheet;

import java.util.List;
import java.util.function.Supplier;

import org.eclipse.emf.common.command.AbstractCommand;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;

/** Several commands that are undone as one; each is made when those before it have been executed. */
public final class StepCommand extends AbstractCommand {

    private final List<Supplier<Command>> steps;
    private final CompoundCommand done = new CompoundCommand();

    /** Creates a command. */
    public StepCommand(String label, List<Supplier<Command>> steps) {
        super(label);
        this.steps = List.copyOf(steps);
    }

    @Override
    protected boolean prepare() {
        return !steps.isEmpty();
    }

    @Override
    public void execute() {
        for (Supplier<Command> step : steps) {
            Command command = step.get();
            if (!done.appendAndExecute(command)) {
                throw new IllegalStateException(getLabel() + " cannot be executed: " + command);
            }
        }
    }

    @Override
    public void undo() {
        done.undo();
    }

    @Override
    public void redo() {
        done.redo();
    }

    @Override
    public void dispose() {
        done.dispose();
    }
}
