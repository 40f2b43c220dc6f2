/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.limits;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

import org.ferrule.chart.words.Phrases;
import org.ferrule.engine.limits.CaseLimit.Kind;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.thresholds.dose.DoseLevel;
import org.ferrule.thresholds.dose.DoseQuantity;
import org.ferrule.thresholds.dose.DoseRule;
import org.ferrule.thresholds.dose.DoseRules;

/** The published levels of air kerma at the reference point, beside what a plan has used and will use. */
final class DoseLevels {
    private static final int MILLI = 3;

    private final Phrases phrases;
    private final Plan plan;

    DoseLevels(Phrases phrases, Plan plan) {
        this.phrases = phrases;
        this.plan = plan;
    }

    List<CaseLimit> all() {
        List<CaseLimit> all = new ArrayList<>();
        for (DoseRule rule : DoseRules.published()) {
            rule.levels().stream().filter(level -> level.quantity() == DoseQuantity.AIR_KERMA)
                    .forEach(level -> all.add(new CaseLimit(Kind.DOSE, words(rule, level),
                            CaseLimits.words(rule.source()), level.timesReached(used()) > 0)));
        }
        return all;
    }

    /** What each source asks for next. */
    List<String> brief() {
        List<String> lines = new ArrayList<>();
        for (DoseRule rule : DoseRules.published()) {
            Optional<DoseRule.Notice> next = rule.next(DoseQuantity.AIR_KERMA,
                    Map.of(DoseQuantity.AIR_KERMA, used()));
            next.ifPresent(notice -> lines.add(phrases.fill("dose.next",
                    notice.level().nextAt(used()).orElseThrow().toPlainString(), name(rule, notice.level()),
                    rule.source().citation())));
        }
        return lines;
    }

    private BigDecimal used() {
        return gray(plan.used().doseMgy());
    }

    private static BigDecimal gray(double milligray) {
        return BigDecimal.valueOf(milligray).movePointLeft(MILLI);
    }

    private String name(DoseRule rule, DoseLevel level) {
        return phrases.get("dose." + rule.id() + "." + level.id());
    }

    private String words(DoseRule rule, DoseLevel level) {
        String from = phrases.fill(level.threshold().included() ? "dose.from" : "dose.beyond",
                level.threshold().value().toPlainString());
        String text = phrases.fill(level.every().isPresent() ? "dose.again" : "dose", from, name(rule, level),
                level.every().map(BigDecimal::toPlainString).orElse(""));
        if (level.timesReached(used()) > 0) {
            return phrases.fill("reached", text);
        }
        OptionalInt step = CaseLimits.firstStep(plan, rung -> level.timesReached(gray(rung.worst().doseMgy())) > 0);
        return step.isPresent() ? phrases.fill("reachedWith", text, Integer.toString(step.getAsInt())) : text;
    }
}
