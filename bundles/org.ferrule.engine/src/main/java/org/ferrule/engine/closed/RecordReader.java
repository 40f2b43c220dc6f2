/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.closed;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.ferrule.model.CaseDocument;
import org.ferrule.model.ClosedDevice;
import org.ferrule.model.ClosedStep;
import org.ferrule.model.Closing;
import org.ferrule.model.LoggedAttempt;
import org.ferrule.model.UsedUnit;

/** Puts the plan of a record and the log of its case side by side. */
final class RecordReader {
    private final CaseDocument file;
    private final Closing closing;
    private final RecordNames names;

    RecordReader(CaseDocument file, Closing closing, RecordNames names) {
        this.file = file;
        this.closing = closing;
        this.names = names;
    }

    List<PlannedStep> plan() {
        List<PlannedStep> steps = new ArrayList<>();
        for (int i = 0; i < closing.getPlan().size(); i++) {
            steps.add(step(closing.getPlan().get(i), tries(i)));
        }
        return steps;
    }

    /** What was logged for a step: of a technique that was planned several times one try each, and the last the rest. */
    private List<LoggedAttempt> tries(int index) {
        String move = closing.getPlan().get(index).getMove();
        List<LoggedAttempt> all = file.getLog().stream().filter(entry -> same(entry.getMove(), move)).toList();
        int before = (int) closing.getPlan().subList(0, index).stream().filter(step -> same(step.getMove(), move))
                .count();
        boolean last = closing.getPlan().subList(index + 1, closing.getPlan().size()).stream()
                .noneMatch(step -> same(step.getMove(), move));
        return all.stream().skip(before).limit(last ? all.size() : 1).toList();
    }

    private static boolean same(String one, String other) {
        return ClosedCase.text(one).equals(ClosedCase.text(other));
    }

    private PlannedStep step(ClosedStep step, List<LoggedAttempt> tries) {
        List<UsedUnit> units = tries.stream().flatMap(entry -> entry.getUnits().stream()).toList();
        return new PlannedStep(ClosedCase.text(step.getMove()), name(step), tries.stream().map(this::ending).toList(),
                step.getDevices().stream().map(device -> new PlannedStep.Equipment(device, names.device(device),
                        opened(device, units))).toList());
    }

    private String name(ClosedStep step) {
        String then = ClosedCase.text(step.getName());
        return then.isEmpty() ? names.move(ClosedCase.text(step.getMove())) : then;
    }

    private List<UsedDevice> opened(String device, List<UsedUnit> units) {
        return devices().stream().filter(used -> used.device().equals(device) || used.item().equals(device))
                .filter(used -> units.stream().anyMatch(unit -> same(unit.getItem(), used.item())
                        && same(unit.getLot(), used.lot())))
                .toList();
    }

    private Ending ending(LoggedAttempt entry) {
        return Ending.of(entry, names.isSetup(ClosedCase.text(entry.getMove())));
    }

    List<LoggedTry> log() {
        return file.getLog().stream().map(this::logged).toList();
    }

    private LoggedTry logged(LoggedAttempt entry) {
        String move = ClosedCase.text(entry.getMove());
        Optional<ClosedStep> planned = closing.getPlan().stream().filter(step -> same(step.getMove(), move))
                .findFirst();
        return new LoggedTry(move, planned.map(this::name).orElseGet(() -> names.move(move)), ending(entry),
                planned.isPresent(), ResourceTotal.amounts(entry), ClosedCase.text(entry.getRemark()));
    }

    List<UsedDevice> devices() {
        return closing.getDevices().stream().map(this::device).toList();
    }

    private UsedDevice device(ClosedDevice device) {
        String id = ClosedCase.text(device.getId());
        String item = device.getItem() == null ? id : device.getItem().strip();
        return new UsedDevice(id, item, names.item(item), ClosedCase.text(device.getLot()),
                ClosedCase.text(device.getExpiry()));
    }
}
