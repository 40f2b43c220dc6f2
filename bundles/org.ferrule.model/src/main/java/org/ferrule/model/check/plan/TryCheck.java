/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check.plan;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.ferrule.model.Costed;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.PlannedTry;
import org.ferrule.model.Prior;
import org.ferrule.model.Setup;
import org.ferrule.model.Technique;
import org.ferrule.model.check.Check;
import org.ferrule.model.check.Examination;
import org.ferrule.model.check.ProblemCode;

/**
 * What is assumed of a chance says who assumes it; the chance of a try is no more than that of the try before; tries and
 * set-ups say what they use up.
 */
final class TryCheck implements Check {

    private static final MathContext SHOWN = new MathContext(3);

    @Override
    public void check(EObject object, Examination examination) {
        if (object instanceof Prior prior && prior.getLabel() != null && prior.getLabel().isBlank()) {
            examination.add(ProblemCode.PRIOR_WITHOUT_LABEL, prior, Literals.PRIOR__LABEL);
        }
        if (object instanceof PlannedTry || object instanceof Setup) {
            checkCosts((Costed) object, examination);
        }
        if (object instanceof Technique technique) {
            checkOrder(technique.getTries(), examination);
        }
    }

    private static void checkCosts(Costed costed, Examination examination) {
        if (Literals.COSTED.getEAttributes().stream().noneMatch(costed::eIsSet)) {
            examination.add(ProblemCode.NO_COSTS, costed, null);
        }
    }

    private static void checkOrder(List<PlannedTry> tries, Examination examination) {
        for (int i = 1; i < tries.size(); i++) {
            Optional<BigDecimal> before = mean(tries.get(i - 1));
            Optional<BigDecimal> mean = mean(tries.get(i));
            if (before.isPresent() && mean.isPresent() && mean.get().compareTo(before.get()) > 0) {
                examination.add(ProblemCode.CHANCE_RISES, tries.get(i), Literals.PLANNED_TRY__SUCCESSES,
                        mean.get().round(SHOWN).toPlainString(), before.get().round(SHOWN).toPlainString());
            }
        }
    }

    /** The mean of prior and counts together; nothing where they make none. */
    private static Optional<BigDecimal> mean(PlannedTry planned) {
        Prior prior = planned.getPrior();
        if (prior == null || prior.getSuccesses() == null || prior.getFailures() == null) {
            return Optional.empty();
        }
        BigDecimal successes = prior.getSuccesses().add(BigDecimal.valueOf(planned.getSuccesses()));
        BigDecimal all = successes.add(prior.getFailures()).add(BigDecimal.valueOf(planned.getFailures()));
        return all.signum() > 0 ? Optional.of(successes.divide(all, MathContext.DECIMAL64)) : Optional.empty();
    }
}
