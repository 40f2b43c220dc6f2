/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.translate;

import java.math.BigDecimal;
import java.util.Optional;

import org.ferrule.fit.rules.Limits;
import org.ferrule.fit.rules.Limits.Allowance;
import org.ferrule.fit.rules.Limits.ChanceLimit;
import org.ferrule.fit.rules.Limits.FlowLimit;
import org.ferrule.fit.rules.Limits.FlowUse;
import org.ferrule.fit.rules.Limits.Purpose;
import org.ferrule.fit.rules.Limits.RatioBand;
import org.ferrule.fit.rules.Limits.RatioUse;
import org.ferrule.model.RuleSet;

/** Copies the thresholds and allowances of a rule set. What one needs and does not state is an error that names it. */
final class LimitsTranslator {
    private final SourceIndex sources;

    LimitsTranslator(SourceIndex sources) {
        this.sources = sources;
    }

    Limits translate(RuleSet rules) {
        return new Limits(rules.getFlowLimits().stream().map(this::flow).toList(),
                rules.getAllowances().stream().map(this::allowance).toList(),
                rules.getRatioBands().stream().map(this::ratio).toList(),
                rules.getChanceLimits().stream().map(this::chance).toList());
    }

    private FlowLimit flow(org.ferrule.model.FlowLimit limit) {
        require(limit.isSetUse(), "a limit of flow", "use");
        return new FlowLimit(switch (limit.getUse()) {
            case CONTRAST -> FlowUse.CONTRAST;
            case PRESSURE -> FlowUse.PRESSURE;
        }, number("a limit of flow", "least", limit.getLeast()), sources.of(limit));
    }

    private Allowance allowance(org.ferrule.model.Allowance allowance) {
        require(allowance.isSetPurpose(), "an allowance", "purpose");
        return new Allowance(switch (allowance.getPurpose()) {
            case HUB_AND_VALVE -> Purpose.HUB_AND_VALVE;
            case EXTENSION_OVERLAP -> Purpose.EXTENSION_OVERLAP;
            case GRIP -> Purpose.GRIP;
        }, RuleTranslator.length("\"length\" of the allowance for " + allowance.getPurpose().getLiteral(),
                allowance.getLength()), sources.of(allowance));
    }

    private RatioBand ratio(org.ferrule.model.RatioBand band) {
        require(band.isSetUse(), "a band of ratios", "use");
        require(band.getMeaning() != null, "a band of ratios", "meaning");
        return new RatioBand(switch (band.getUse()) {
            case BALLOON_TO_VESSEL -> RatioUse.BALLOON_TO_VESSEL;
            case BURR_TO_VESSEL -> RatioUse.BURR_TO_VESSEL;
        }, Optional.ofNullable(band.getLow()), Optional.ofNullable(band.getHigh()), band.getMeaning(),
                sources.of(band));
    }

    private ChanceLimit chance(org.ferrule.model.ChanceLimit limit) {
        return new ChanceLimit(number("a limit of chance", "greatest", limit.getGreatest()), sources.of(limit));
    }

    private static BigDecimal number(String rule, String key, BigDecimal value) {
        require(value != null, rule, key);
        return value;
    }

    private static void require(boolean stated, String rule, String key) {
        if (!stated) {
            throw new IllegalArgumentException(rule + " lacks \"" + key + "\"");
        }
    }
}
