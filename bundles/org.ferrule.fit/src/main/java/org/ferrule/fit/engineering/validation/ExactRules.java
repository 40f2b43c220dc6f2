/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.validation;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import org.ferrule.fit.device.SourceRef;
import org.ferrule.fit.rules.AfterUseRule;
import org.ferrule.fit.rules.ClearanceRule;
import org.ferrule.fit.rules.FigureClass;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.fit.rules.Span;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;

/** The rules under which published passages are checked: a figure without a tolerance is exact, and nothing grows. */
final class ExactRules {
    private static final Length WIRE_AHEAD = Length.of("30", LengthUnit.MILLIMETRE);

    private ExactRules() {
    }

    /** The rules with that required clearance. */
    static RuleSet requiring(Length required) {
        List<Span> spans = Stream.of(FigureClass.values())
                .map(f -> new Span(f, Set.of(), Length.ZERO, Length.ZERO, SourceRef.NONE)).toList();
        return new RuleSet("figures taken as exact", "1", spans,
                List.of(new ClearanceRule(Set.of(), Set.of(), required, SourceRef.NONE)),
                List.of(new AfterUseRule(Set.of(), BigDecimal.ONE, BigDecimal.ONE, BigDecimal.ONE, SourceRef.NONE)),
                Optional.of(WIRE_AHEAD), Optional.empty());
    }
}
