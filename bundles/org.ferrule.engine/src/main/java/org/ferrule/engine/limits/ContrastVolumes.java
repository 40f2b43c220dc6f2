/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.limits;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.Collectors;

import org.ferrule.chart.words.Phrases;
import org.ferrule.engine.limits.CaseLimit.Kind;
import org.ferrule.engine.plan.CaseFigures;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.thresholds.renal.ContrastLimit;
import org.ferrule.thresholds.renal.ContrastLimits;
import org.ferrule.thresholds.renal.CreatinineClearance;
import org.ferrule.thresholds.renal.RenalFigure;

/** Creatinine clearance, and the published limits of contrast medium, which disagree; volumes are rounded down. */
final class ContrastVolumes {
    private final Phrases phrases;
    private final CaseFigures figures;
    private final Map<RenalFigure, BigDecimal> given;
    private final Plan plan;

    ContrastVolumes(Phrases phrases, CaseFigures figures, Plan plan) {
        this.phrases = phrases;
        this.figures = figures;
        this.given = figures.renal();
        this.plan = plan;
    }

    List<CaseLimit> all() {
        List<CaseLimit> all = new ArrayList<>();
        figures.clearance().ifPresent(clearance -> all.add(new CaseLimit(Kind.CONTRAST, words(clearance),
                CaseLimits.words(CreatinineClearance.SOURCE), false)));
        known().forEach(limit -> all.add(new CaseLimit(Kind.CONTRAST, words(limit),
                CaseLimits.words(limit.source()), isReached(limit, used()))));
        missing(all);
        return all;
    }

    /** From the lowest to the highest, and which are reached. */
    List<String> brief() {
        List<ContrastLimit> known = known();
        if (known.isEmpty()) {
            return List.of();
        }
        List<String> lines = new ArrayList<>();
        figures.clearance().ifPresent(clearance -> lines.add(words(clearance)));
        ContrastLimit first = known.get(0);
        ContrastLimit last = known.get(known.size() - 1);
        lines.add(phrases.fill(known.size() == 1 ? "contrast.brief.1" : "contrast.brief", brief(first), brief(last)));
        return lines;
    }

    private String brief(ContrastLimit limit) {
        return phrases.fill("contrast.short", volume(limit), phrases.get("limit." + limit.id()),
                limit.source().citation());
    }

    private String words(CreatinineClearance clearance) {
        return phrases.fill("clearance", clearance.mlPerMin().setScale(0, RoundingMode.FLOOR).toPlainString());
    }

    /** Those whose figures are stated, the lowest first. */
    private List<ContrastLimit> known() {
        return ContrastLimits.published().stream().filter(limit -> limit.missing(given).isEmpty())
                .sorted(Comparator.comparing(limit -> limit.limitMl(given).orElseThrow())).toList();
    }

    private String volume(ContrastLimit limit) {
        return limit.limitMl(given).orElseThrow().setScale(0, RoundingMode.FLOOR).toPlainString();
    }

    private String words(ContrastLimit limit) {
        String text = phrases.fill("contrast", volume(limit), phrases.get("limit." + limit.id()));
        if (isReached(limit, used())) {
            return phrases.fill("reached", text);
        }
        OptionalInt step = CaseLimits.firstStep(plan,
                rung -> isReached(limit, BigDecimal.valueOf(rung.worst().contrastMl())));
        return step.isPresent() ? phrases.fill("reachedWith", text, Integer.toString(step.getAsInt())) : text;
    }

    private BigDecimal used() {
        return BigDecimal.valueOf(plan.used().contrastMl());
    }

    private boolean isReached(ContrastLimit limit, BigDecimal volumeMl) {
        return limit.isReachedBy(volumeMl, given).orElse(false);
    }

    /** Names the figures that would tell more. */
    private void missing(List<CaseLimit> all) {
        List<ContrastLimit> unknown = ContrastLimits.published().stream()
                .filter(limit -> !limit.missing(given).isEmpty()).toList();
        if (!unknown.isEmpty()) {
            String needed = unknown.stream().flatMap(limit -> limit.missing(given).stream()).distinct()
                    .map(figure -> phrases.get("figure." + figure)).collect(Collectors.joining(", "));
            all.add(new CaseLimit(Kind.CONTRAST,
                    phrases.fill("contrast.missing", Integer.toString(unknown.size()), needed), "", false));
        }
    }
}
