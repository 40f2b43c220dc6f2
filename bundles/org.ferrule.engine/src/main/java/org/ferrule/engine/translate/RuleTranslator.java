/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.translate;

import java.math.BigDecimal;
import java.util.Optional;

import org.ferrule.fit.rules.AfterUseRule;
import org.ferrule.fit.rules.ClearanceRule;
import org.ferrule.fit.rules.FigureClass;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.fit.rules.RuleSetException;
import org.ferrule.fit.rules.Sampling;
import org.ferrule.fit.rules.Span;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;

/** Copies a rule set. What a rule needs and does not state is an error that names it. */
public final class RuleTranslator {
    private final org.ferrule.model.RuleSet rules;
    private final SourceIndex sources;

    private RuleTranslator(org.ferrule.model.RuleSet rules) {
        this.rules = rules;
        this.sources = new SourceIndex(rules);
    }

    /**
     * The record of a rule set.
     *
     * @throws RuleSetException naming a rule that lacks something
     */
    public static RuleSet translate(org.ferrule.model.RuleSet rules) {
        try {
            return new RuleTranslator(rules).ruleSet();
        } catch (IllegalArgumentException e) {
            throw new RuleSetException(
                    "rule set \"" + DeviceTranslator.text(rules.getTitle()) + "\": " + e.getMessage());
        }
    }

    private RuleSet ruleSet() {
        return new RuleSet(DeviceTranslator.text(rules.getTitle()), DeviceTranslator.text(rules.getRevision()),
                rules.getSpans().stream().map(this::span).toList(),
                rules.getClearances().stream().map(this::clearance).toList(),
                rules.getAfterUse().stream().map(this::afterUse).toList(),
                Optional.ofNullable(rules.getWireAhead()).map(d -> length("wireAhead", d)), sampling(),
                new LimitsTranslator(sources).translate(rules));
    }

    private Optional<Sampling> sampling() {
        boolean both = rules.getConfidence() != null && rules.getCoverage() != null;
        return both ? Optional.of(new Sampling(rules.getConfidence(), rules.getCoverage())) : Optional.empty();
    }

    private Span span(org.ferrule.model.Span span) {
        if (!span.isSetFigure()) {
            throw new IllegalArgumentException("a span does not say for which figure it is");
        }
        String word = span.getFigure().getLiteral();
        return new Span(FigureClass.ofWord(word), Words.kinds(span.getKinds()),
                length("\"below\" of the span of " + word, span.getBelow()),
                length("\"above\" of the span of " + word, span.getAbove()), span.isRunsLow(), sources.of(span));
    }

    private ClearanceRule clearance(org.ferrule.model.ClearanceRule rule) {
        return new ClearanceRule(Words.kinds(rule.getOuter()), Words.kinds(rule.getInner()),
                length("\"required\" of a clearance", rule.getRequired()), sources.of(rule));
    }

    private AfterUseRule afterUse(org.ferrule.model.AfterUseRule rule) {
        return new AfterUseRule(Words.kinds(rule.getKinds()), factor("growthLow", rule.getGrowthLow()),
                factor("growthCentre", rule.getGrowthCentre()), factor("growthHigh", rule.getGrowthHigh()),
                sources.of(rule));
    }

    private static BigDecimal factor(String name, BigDecimal value) {
        if (value == null) {
            throw new IllegalArgumentException("an after-use rule lacks \"" + name + "\"");
        }
        return value;
    }

    static Length length(String name, Dimension value) {
        if (value == null || !value.readable()) {
            throw new IllegalArgumentException(name + (value == null ? " is missing"
                    : " cannot be read: \"" + value.text() + "\""));
        }
        return value.label();
    }
}
