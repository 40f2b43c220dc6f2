/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.drawing;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import org.ferrule.fit.device.SourceRef;
import org.ferrule.fit.rules.AfterUseRule;
import org.ferrule.fit.rules.FigureClass;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.fit.rules.Span;
import org.ferrule.quantity.Length;

/** Rules for drawing only: they assume nothing beyond what a label states, and answer no question. */
final class BareRules {

    private BareRules() {
    }

    static RuleSet create() {
        List<Span> spans = Stream.of(FigureClass.values())
                .map(figure -> new Span(figure, Set.of(), Length.ZERO, Length.ZERO, SourceRef.NONE)).toList();
        AfterUseRule unchanged = new AfterUseRule(Set.of(), BigDecimal.ONE, BigDecimal.ONE, BigDecimal.ONE,
                SourceRef.NONE);
        return new RuleSet("", "", spans, List.of(), List.of(unchanged), Optional.empty(), Optional.empty());
    }
}
