/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.plan;

import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.ferrule.engine.document.DocumentHashes;
import org.ferrule.escalation.equipment.Candidate;
import org.ferrule.escalation.equipment.RoleAnswer;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.escalation.plan.Planner;
import org.ferrule.escalation.plan.Rung;
import org.ferrule.escalation.state.Attempt.UsedUnit;
import org.ferrule.escalation.state.CaseFile;
import org.ferrule.model.CaseEnd;
import org.ferrule.model.ClosedDevice;
import org.ferrule.model.ClosedStep;
import org.ferrule.model.Closing;
import org.ferrule.model.Document;
import org.ferrule.model.ModelFactory;
import org.ferrule.shelf.stock.Item;
import org.ferrule.shelf.stock.Lot;

/**
 * Freezes a case that is over: the plan as it was before anything was logged, the devices that were used with their lots,
 * and which documents it all rested on.
 */
public final class CaseClosing {
    private static final ModelFactory MODEL = ModelFactory.eINSTANCE;

    private CaseClosing() {
    }

    /**
     * A document that a case rested on, as it is stored.
     *
     * @param document for its revision
     * @param bytes as they lie in the file
     */
    public record StoredDocument(Document document, byte[] bytes) {
        public StoredDocument {
            bytes = bytes.clone();
        }
    }

    /**
     * The record of a case; the case itself is not changed.
     *
     * @param ended how
     * @param day on which it is closed
     * @param documents all that it rested on, by the paths that the case names
     * @throws IllegalArgumentException when it is said to have ended as its log does not say
     */
    public static Closing of(AssembledCase assembled, CaseEnd ended, LocalDate day,
            Map<String, StoredDocument> documents) {
        boolean crossed = assembled.plan().progress().crossed();
        if (crossed != (ended == CaseEnd.CROSSED)) {
            throw new IllegalArgumentException("by its log the device is " + (crossed ? "" : "not ")
                    + "across, so that the case cannot have ended as \"" + ended.getLiteral() + "\"");
        }
        Closing closing = MODEL.createClosing();
        closing.setClosed(day.toString());
        closing.setEnded(ended);
        planBefore(assembled).rungs().forEach(rung -> closing.getPlan().add(step(rung)));
        used(assembled).forEach(unit -> closing.getDevices().add(device(assembled, unit)));
        documents.forEach((path, stored) -> closing.getHashes()
                .add(DocumentHashes.of(path, stored.document(), stored.bytes())));
        return closing;
    }

    private static Plan planBefore(AssembledCase assembled) {
        CaseFile file = assembled.file();
        CaseFile before = new CaseFile(file.title(), file.day(), file.system(), file.target(), file.deliver(),
                file.facts(), file.aim(), file.spent(), List.of());
        return new Planner(assembled.instruments(), assembled.ladder()).plan(before, assembled.stock());
    }

    private static ClosedStep step(Rung rung) {
        ClosedStep step = MODEL.createClosedStep();
        step.setMove(rung.move().id());
        step.setName(rung.move().name());
        rung.equipment().roles().stream().map(RoleAnswer::chosen).flatMap(Optional::stream).map(Candidate::device)
                .flatMap(Optional::stream).forEach(step.getDevices()::add);
        return step;
    }

    private static Set<UsedUnit> used(AssembledCase assembled) {
        Set<UsedUnit> used = new LinkedHashSet<>();
        assembled.file().log().forEach(attempt -> used.addAll(attempt.units()));
        return used;
    }

    private static ClosedDevice device(AssembledCase assembled, UsedUnit unit) {
        Optional<Item> item = assembled.stock().shelf().item(unit.item());
        ClosedDevice device = MODEL.createClosedDevice();
        device.setId(item.flatMap(Item::device).orElse(unit.item()));
        device.setItem(unit.item());
        device.setLot(unit.lot().isEmpty() ? null : unit.lot());
        device.setExpiry(item.stream().flatMap(i -> i.lots().stream()).filter(l -> l.lot().equals(unit.lot()))
                .findFirst().flatMap(Lot::expiry).map(LocalDate::toString).orElse(null));
        return device;
    }
}
