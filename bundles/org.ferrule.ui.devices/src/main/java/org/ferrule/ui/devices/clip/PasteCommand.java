/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.clip;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.edit.command.AddCommand;
import org.ferrule.model.DeviceParts;
import org.ferrule.ui.devices.sheet.SheetEdits;
import org.ferrule.ui.devices.sheet.StepCommand;
import org.ferrule.ui.document.DocumentSession;

/** Pastes what a plan says, by one command that can be undone. */
public final class PasteCommand {

    private final DocumentSession session;
    private final PasteTarget target;

    /** Creates a pasting. */
    public PasteCommand(DocumentSession session, PasteTarget target) {
        this.session = session;
        this.target = target;
    }

    /** Pastes the cells that change something; those with problems are left out. */
    public void run(List<PasteCell> cells) {
        List<PasteCell> real = cells.stream().filter(PasteCell::changes).toList();
        List<Supplier<Command>> steps = new ArrayList<>(new SheetEdits(session)
                .steps(real.stream().filter(cell -> !cell.isNew()).map(PasteCell::change).toList()));
        Map<Integer, List<PasteCell>> added = new LinkedHashMap<>();
        real.stream().filter(PasteCell::isNew)
                .forEach(cell -> added.computeIfAbsent(cell.line(), line -> new ArrayList<>()).add(cell));
        added.values().forEach(entry -> add(entry, steps));
        if (!steps.isEmpty()) {
            session.execute(
                    new StepCommand("Paste of " + real.size() + (real.size() == 1 ? " value" : " values"), steps));
        }
    }

    private void add(List<PasteCell> entry, List<Supplier<Command>> steps) {
        DeviceParts device = (DeviceParts) EcoreUtil.create(target.list().getEReferenceType());
        steps.add(() -> AddCommand.create(session.domain(), target.library(), target.list(), device));
        // what follows from parts comes last: the line, which may state them, must be known before
        entry.stream().filter(cell -> isOwn(device, cell)).forEach(cell -> steps.add(step(device, cell)));
        entry.stream().filter(cell -> !isOwn(device, cell)).forEach(cell -> steps.add(step(device, cell)));
    }

    private static boolean isOwn(DeviceParts device, PasteCell cell) {
        return cell.column().attribute().filter(device.eClass().getEAllAttributes()::contains).isPresent();
    }

    private Supplier<Command> step(DeviceParts device, PasteCell cell) {
        return () -> cell.column().command(session.domain(), device, cell.value());
    }
}
