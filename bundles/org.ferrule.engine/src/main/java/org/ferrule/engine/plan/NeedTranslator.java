/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import org.eclipse.emf.ecore.EStructuralFeature;
import org.ferrule.escalation.technique.LengthRange;
import org.ferrule.escalation.technique.Need;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.Move;

/** Copies what must hold. What cannot be read never holds. */
final class NeedTranslator {
    private final Undescribed undescribed;
    private final PlanFigures figures;

    NeedTranslator(Undescribed undescribed, PlanFigures figures) {
        this.undescribed = undescribed;
        this.figures = figures;
    }

    /** The needs of a move; more can be added. */
    List<Need> translate(Move move) {
        List<Need> needs = new ArrayList<>();
        move.getNeeds().forEach(written -> add(written, needs));
        return needs;
    }

    private void add(org.ferrule.model.Need written, List<Need> needs) {
        int before = needs.size();
        if (written.getFact() != null) {
            addFact(written, needs);
        }
        addRange(written, Literals.NEED__VESSEL, Need.Vessel::new, needs);
        addRange(written, Literals.NEED__BRANCH, Need.Branch::new, needs);
        if (needs.size() == before) {
            undescribed.need(needs, written, Literals.NEED__FACT,
                    "a need names neither a fact, nor a vessel or branch");
        }
    }

    private void addFact(org.ferrule.model.Need written, List<Need> needs) {
        if (undescribed.knows(written.getFact())) {
            needs.add(new Need.Fact(written.getFact()));
        } else {
            undescribed.need(needs, written, Literals.NEED__FACT,
                    "needs the fact \"" + written.getFact() + "\", which nobody describes");
        }
    }

    private void addRange(org.ferrule.model.Need written, EStructuralFeature feature,
            Function<LengthRange, Need> need, List<Need> needs) {
        if (written.eIsSet(feature)) {
            Optional<LengthRange> range = figures.range(written, feature);
            range.map(need).ifPresentOrElse(needs::add,
                    () -> undescribed.need(needs, written, feature, "the range of diameters cannot be read"));
        }
    }
}
