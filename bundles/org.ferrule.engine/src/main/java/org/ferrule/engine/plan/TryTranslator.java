/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.ferrule.escalation.technique.Chance;
import org.ferrule.escalation.technique.Need;
import org.ferrule.escalation.technique.PlannedTry;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.Prior;

/** Copies tries. A technique with one whose chance cannot be read is not planned. */
final class TryTranslator {
    private final Undescribed undescribed;
    private final PlanFigures figures;

    TryTranslator(Undescribed undescribed, PlanFigures figures) {
        this.undescribed = undescribed;
        this.figures = figures;
    }

    /** The tries that can be read; what cannot adds a need that never holds. */
    List<PlannedTry> translate(List<org.ferrule.model.PlannedTry> tries, List<Need> must) {
        List<PlannedTry> planned = new ArrayList<>();
        for (org.ferrule.model.PlannedTry written : tries) {
            chance(written, must).ifPresent(c -> planned.add(new PlannedTry(figures.costs(written), c)));
        }
        return planned;
    }

    private Optional<Chance> chance(org.ferrule.model.PlannedTry written, List<Need> must) {
        Prior prior = written.getPrior();
        if (prior == null || prior.getSuccesses() == null || prior.getFailures() == null || prior.getLabel() == null) {
            undescribed.need(must, written, Literals.PLANNED_TRY__PRIOR,
                    "a try does not say what is assumed of its chance, and who assumes it");
            return Optional.empty();
        }
        try {
            return Optional.of(new Chance(written.getSuccesses(), written.getFailures(), new Chance.Prior(
                    prior.getSuccesses().doubleValue(), prior.getFailures().doubleValue(), prior.getLabel())));
        } catch (IllegalArgumentException e) {
            undescribed.need(must, written, Literals.PLANNED_TRY__PRIOR, e.getMessage());
            return Optional.empty();
        }
    }
}
