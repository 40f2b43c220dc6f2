/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.closed;

import java.util.List;
import java.util.Objects;

import org.ferrule.model.CaseDocument;
import org.ferrule.model.CaseEnd;
import org.ferrule.model.Closing;

/**
 * What the record of a closed case says: taken from the case alone, so that it can be read when libraries, techniques
 * and shelf have changed or are gone. Immutable.
 *
 * @param title of the case
 * @param closed the day, as ISO 8601 writes it
 * @param ended how
 * @param plan as it was before anything was logged
 * @param log what happened
 * @param totals of each resource
 * @param devices the boxes that were opened
 * @param documents on which it rested, beside those of today
 * @param currency of the shelf of today; empty where none is known
 */
public record ClosedCase(String title, String closed, CaseEnd ended, List<PlannedStep> plan, List<LoggedTry> log,
        List<ResourceTotal> totals, List<UsedDevice> devices, List<Fingerprint> documents, String currency) {
    public ClosedCase {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(closed, "closed");
        Objects.requireNonNull(ended, "ended");
        plan = List.copyOf(plan);
        log = List.copyOf(log);
        totals = List.copyOf(totals);
        devices = List.copyOf(devices);
        documents = List.copyOf(documents);
        Objects.requireNonNull(currency, "currency");
    }

    /**
     * The record of a case. To be used where the model may be read.
     *
     * @param names what the documents of today call things
     * @param documents the fingerprints of its record, compared
     * @throws IllegalArgumentException if the case is not closed
     */
    public static ClosedCase of(CaseDocument file, RecordNames names, List<Fingerprint> documents) {
        Closing closing = file.getClosing();
        if (closing == null) {
            throw new IllegalArgumentException("the case \"" + text(file.getTitle()) + "\" is not closed");
        }
        RecordReader reader = new RecordReader(file, closing, names);
        List<LoggedTry> log = reader.log();
        return new ClosedCase(text(file.getTitle()), text(closing.getClosed()), closing.getEnded(), reader.plan(), log,
                ResourceTotal.of(file, log), reader.devices(), documents, names.currency());
    }

    /** The same beside other documents of today. */
    public ClosedCase beside(List<Fingerprint> others) {
        return new ClosedCase(title, closed, ended, plan, log, totals, devices, others, currency);
    }

    static String text(String value) {
        return value == null ? "" : value.strip();
    }
}
