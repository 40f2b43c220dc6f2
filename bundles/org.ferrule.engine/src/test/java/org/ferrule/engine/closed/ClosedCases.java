/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.closed;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.model.AttemptOutcome;
import org.ferrule.model.CaseDocument;
import org.ferrule.model.CaseEnd;
import org.ferrule.model.ClosedDevice;
import org.ferrule.model.ClosedStep;
import org.ferrule.model.DocumentHash;
import org.ferrule.model.LoggedAttempt;
import org.ferrule.model.ModelFactory;
import org.ferrule.model.UsedUnit;

/** A closed case for tests, put together line by line. */
final class ClosedCases {
    private static final ModelFactory MODEL = ModelFactory.eINSTANCE;

    private final CaseDocument file = MODEL.createCaseDocument();

    ClosedCases() {
        file.setTitle("A case");
        file.setClosing(MODEL.createClosing());
        file.getClosing().setClosed("2026-04-02");
        file.getClosing().setEnded(CaseEnd.STOPPED);
    }

    ClosedCases planned(String move, String name, String... devices) {
        ClosedStep step = MODEL.createClosedStep();
        step.setMove(move);
        step.setName(name);
        step.getDevices().addAll(List.of(devices));
        file.getClosing().getPlan().add(step);
        return this;
    }

    /** An entry of the log; each unit is {@code item:lot}. */
    ClosedCases logged(String move, AttemptOutcome outcome, int minutes, String... units) {
        LoggedAttempt entry = MODEL.createLoggedAttempt();
        entry.setMove(move);
        if (outcome != null) {
            entry.setOutcome(outcome);
        }
        entry.setMinutes(BigDecimal.valueOf(minutes));
        Stream.of(units).map(unit -> unit.split(":")).forEach(unit -> {
            UsedUnit used = MODEL.createUsedUnit();
            used.setItem(unit[0]);
            used.setLot(unit[1]);
            entry.getUnits().add(used);
        });
        file.getLog().add(entry);
        return this;
    }

    ClosedCases opened(String device, String item, String lot) {
        ClosedDevice opened = MODEL.createClosedDevice();
        opened.setId(device);
        opened.setItem(item);
        opened.setLot(lot);
        file.getClosing().getDevices().add(opened);
        return this;
    }

    ClosedCases budget(String before, String minutes) {
        file.setSpent(MODEL.createCosts());
        file.getSpent().setMinutes(new BigDecimal(before));
        file.setAim(MODEL.createCaseAim());
        file.getAim().setBudgets(MODEL.createCosts());
        file.getAim().getBudgets().setMinutes(new BigDecimal(minutes));
        return this;
    }

    ClosedCases restingOn(String path, String sha256) {
        DocumentHash hash = MODEL.createDocumentHash();
        hash.setFile(path);
        hash.setSha256(sha256);
        file.getClosing().getHashes().add(hash);
        return this;
    }

    CaseDocument file() {
        return file;
    }

    /** As it is read where no document is left. */
    ClosedCase read() {
        return ClosedCase.of(file, new RecordNames(List.of(), Optional.empty(), Optional.empty()), List.of());
    }
}
