/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EObject;
import org.ferrule.model.DeviceKind;
import org.ferrule.model.FigureClass;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.RuleSet;
import org.ferrule.model.Span;

/** A rule set has a span for every class of figure of every kind of device, and never two for the same case. */
final class SpanCheck implements Check {

    @Override
    public void check(EObject object, Examination examination) {
        if (object instanceof RuleSet rules) {
            for (FigureClass figure : FigureClass.values()) {
                check(rules, figure, rules.getSpans().stream()
                        .filter(span -> span.isSetFigure() && span.getFigure() == figure).toList(), examination);
            }
        }
    }

    private static void check(RuleSet rules, FigureClass figure, List<Span> spans, Examination examination) {
        Set<Set<DeviceKind>> cases = new HashSet<>();
        for (Span span : spans) {
            if (!cases.add(Set.copyOf(span.getKinds()))) {
                examination.add(ProblemCode.COMPETING_RULES, span, null);
            }
        }
        Set<DeviceKind> left = EnumSet.allOf(DeviceKind.class);
        cases.forEach(left::removeAll);
        if (!cases.contains(Set.of()) && !left.isEmpty()) {
            examination.add(ProblemCode.MISSING_SPAN, rules, Literals.RULE_SET__SPANS, figure.getLiteral(),
                    words(left));
        }
    }

    private static String words(Set<DeviceKind> kinds) {
        return kinds.size() == DeviceKind.values().length ? "any device"
                : kinds.stream().map(kind -> "\"" + kind.getLiteral() + "\"").collect(Collectors.joining(", "));
    }
}
