/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.plan;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalDouble;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.ferrule.escalation.technique.Costs;
import org.ferrule.escalation.technique.LengthRange;
import org.ferrule.model.Costed;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;

/** Reads figures of plans; what cannot be read is told and left out. */
final class PlanFigures {
    private final PlanProblems problems;

    PlanFigures(PlanProblems problems) {
        this.problems = problems;
    }

    /** A length as it is printed; absent where none is stated, or it cannot be read. */
    Optional<Length> length(EObject subject, EStructuralFeature feature) {
        return dimension(subject, feature).map(Dimension::label);
    }

    /** A range; the single figure where the text states only one. Absent where none is stated, or it cannot be read. */
    Optional<LengthRange> range(EObject subject, EStructuralFeature feature) {
        return dimension(subject, feature).map(PlanFigures::range);
    }

    private static LengthRange range(Dimension printed) {
        boolean single = printed.low().isEmpty() && printed.high().isEmpty();
        return single ? new LengthRange(Optional.of(printed.label()), Optional.of(printed.label()))
                : new LengthRange(printed.low(), printed.high());
    }

    private Optional<Dimension> dimension(EObject subject, EStructuralFeature feature) {
        Dimension printed = (Dimension) subject.eGet(feature);
        if (printed != null && !printed.readable()) {
            problems.add(subject, feature, "cannot be read: \"" + printed.text() + "\"");
            return Optional.empty();
        }
        return Optional.ofNullable(printed);
    }

    /** What is used up; nothing of what is not stated. */
    Costs costs(Costed costed) {
        return costed == null ? Costs.NONE : new Costs(amount(costed, Literals.COSTED__MINUTES),
                amount(costed, Literals.COSTED__CONTRAST_ML), amount(costed, Literals.COSTED__DOSE_MGY),
                amount(costed, Literals.COSTED__MONEY));
    }

    /** An amount of nothing or more; nothing where it is not stated. */
    double amount(EObject subject, EStructuralFeature feature) {
        return optionalAmount(subject, feature).orElse(0);
    }

    /** An amount of nothing or more, if it is stated. */
    OptionalDouble optionalAmount(EObject subject, EStructuralFeature feature) {
        BigDecimal number = (BigDecimal) subject.eGet(feature);
        if (number == null) {
            return OptionalDouble.empty();
        }
        if (number.signum() < 0) {
            problems.add(subject, feature, number.toPlainString() + " is less than nothing, and is taken for nothing");
            return OptionalDouble.of(0);
        }
        return OptionalDouble.of(number.doubleValue());
    }
}
