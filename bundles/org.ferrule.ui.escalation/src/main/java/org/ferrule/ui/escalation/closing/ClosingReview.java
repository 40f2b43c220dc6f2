/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.ui.escalation.closing;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.ferrule.engine.plan.CaseClosing;
import org.ferrule.engine.plan.CaseClosing.StoredDocument;
import org.ferrule.engine.plan.UnitTaking;
import org.ferrule.escalation.log.Counted;
import org.ferrule.escalation.state.Attempt;
import org.ferrule.model.CaseEnd;
import org.ferrule.model.Closing;
import org.ferrule.model.ShelfDocument;
import org.ferrule.escalation.state.Attempt.UsedUnit;
import org.ferrule.ui.escalation.live.PlannedCase;

/**
 * What closing a case would do.
 *
 * @param closing the record, not in the case yet
 * @param counts tries that the laboratory may add to its own
 * @param units that were used
 * @param missing of these, what the shelf does not have, one sentence each; empty also where the case names no shelf
 */
record ClosingReview(Closing closing, List<Counted> counts, List<UsedUnit> units, List<String> missing) {

    /**
     * Works it out; takes as long as a plan, and changes nothing.
     *
     * @param stored the documents that the case names, by path
     * @param shelf a copy of the shelf, if the case names one
     */
    static ClosingReview of(PlannedCase planned, LocalDate day, Map<String, StoredDocument> stored,
            Optional<ShelfDocument> shelf) {
        List<Attempt> log = planned.assembled().file().log();
        Closing closing = CaseClosing.of(planned.assembled(), end(planned), day, stored);
        return new ClosingReview(closing, Counted.of(log, planned.assembled().ladder()),
                log.stream().flatMap(attempt -> attempt.units().stream()).toList(),
                shelf.map(EcoreUtil::copy).map(copy -> UnitTaking.take(copy, log)).orElse(List.of()));
    }

    /** How it ended, by its log. */
    static CaseEnd end(PlannedCase planned) {
        return planned.plan().progress().crossed() ? CaseEnd.CROSSED : CaseEnd.STOPPED;
    }
}
