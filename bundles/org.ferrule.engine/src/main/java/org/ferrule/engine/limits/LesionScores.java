/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.limits;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.ferrule.chart.words.Phrases;
import org.ferrule.engine.limits.CaseLimit.Kind;
import org.ferrule.engine.plan.CaseFigures;
import org.ferrule.thresholds.Points;
import org.ferrule.thresholds.lesion.CalciumScore;
import org.ferrule.thresholds.lesion.LesionClass;
import org.ferrule.thresholds.lesion.LesionTrait;
import org.ferrule.thresholds.lesion.OcclusionScore;

/** Scores and class of a lesion, as far as something is stated that they ask for. They order and are no chances. */
final class LesionScores {
    private final Phrases phrases;
    private final CaseFigures figures;

    LesionScores(Phrases phrases, CaseFigures figures) {
        this.phrases = phrases;
        this.figures = figures;
    }

    List<CaseLimit> all() {
        List<CaseLimit> all = new ArrayList<>();
        points("occlusion", figures.occlusion().points()).filter(points -> isOcclusion())
                .ifPresent(points -> all.add(new CaseLimit(Kind.LESION,
                        points, CaseLimits.words(OcclusionScore.SOURCE), false)));
        points("calcium", figures.calcium().points()).ifPresent(points -> all.add(new CaseLimit(Kind.LESION, points,
                CaseLimits.words(CalciumScore.SOURCE), false)));
        Set<LesionTrait> traits = figures.traits();
        if (!traits.isEmpty()) {
            all.add(new CaseLimit(Kind.LESION, phrases.fill("class", LesionClass.of(traits).name(),
                    traits.stream().map(trait -> phrases.get("trait." + trait)).collect(Collectors.joining(", "))),
                    CaseLimits.words(LesionClass.SOURCE), false));
        }
        return all;
    }

    /** Length, bend and calcium alone are no sign of an occlusion. */
    private boolean isOcclusion() {
        OcclusionScore score = figures.occlusion();
        return score.bluntStump().isPresent() || score.failedBefore().isPresent()
                || figures.traits().contains(LesionTrait.RECENT_OCCLUSION)
                || figures.traits().contains(LesionTrait.OLD_OCCLUSION);
    }

    /** Nothing where nobody has stated any of what is asked. */
    private Optional<String> points(String score, Points points) {
        if (points.items().stream().noneMatch(Points.Item::isKnown)) {
            return Optional.empty();
        }
        String span = points.least() == points.most() ? Integer.toString(points.least())
                : phrases.fill("points.span", Integer.toString(points.least()), Integer.toString(points.most()));
        String most = Integer.toString(points.items().stream().mapToInt(item -> worth(score, item)).sum());
        String text = phrases.fill("points." + score, span, most, grade(score, points));
        return Optional.of(points.unknown().isEmpty() ? text
                : phrases.fill("points.unknown", text, points.unknown().stream()
                        .map(trait -> phrases.get("points." + score + "." + trait)).collect(Collectors.joining(", "))));
    }

    private static int worth(String score, Points.Item item) {
        return score.equals("calcium") && item.trait().equals("arc") ? 2 : 1;
    }

    private String grade(String score, Points points) {
        if (!score.equals("occlusion")) {
            return "";
        }
        OcclusionScore.Grade least = OcclusionScore.Grade.of(points.least());
        OcclusionScore.Grade most = OcclusionScore.Grade.of(points.most());
        return least == most ? phrases.get("grade." + least)
                : phrases.fill("points.span", phrases.get("grade." + least), phrases.get("grade." + most));
    }
}
