/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.ferrule.model.Features;

/** Plain numbers lie where the Ecore says that they can. */
final class RangeCheck implements Check {

    /** The Ecore's bounds with their words and with what a number's comparison to a bound must be. */
    private static final Map<String, Bound> BOUNDS = Map.of(
            "above", new Bound("more than ", comparison -> comparison > 0),
            "below", new Bound("less than ", comparison -> comparison < 0),
            "least", new Bound("at least ", comparison -> comparison >= 0),
            "most", new Bound("at most ", comparison -> comparison <= 0));

    private record Bound(String words, IntPredicate holds) {
    }

    @Override
    public void check(EObject object, Examination examination) {
        for (EAttribute attribute : object.eClass().getEAllAttributes()) {
            if (object.eGet(attribute) instanceof Number number && isOut(number, attribute)) {
                examination.add(ProblemCode.OUT_OF_RANGE, object, attribute, decimal(number).toPlainString(),
                        words(attribute));
            }
        }
    }

    private static boolean isOut(Number number, EAttribute attribute) {
        return BOUNDS.entrySet().stream().anyMatch(entry -> bound(attribute, entry.getKey())
                .filter(bound -> !entry.getValue().holds().test(decimal(number).compareTo(bound))).isPresent());
    }

    private static String words(EAttribute attribute) {
        return BOUNDS.keySet().stream().sorted().filter(name -> bound(attribute, name).isPresent())
                .map(name -> BOUNDS.get(name).words() + bound(attribute, name).orElseThrow())
                .collect(Collectors.joining(" and "));
    }

    private static Optional<BigDecimal> bound(EAttribute attribute, String name) {
        return Features.annotation(attribute, name).map(BigDecimal::new);
    }

    private static BigDecimal decimal(Number number) {
        return number instanceof BigDecimal exact ? exact : BigDecimal.valueOf(number.longValue());
    }
}
