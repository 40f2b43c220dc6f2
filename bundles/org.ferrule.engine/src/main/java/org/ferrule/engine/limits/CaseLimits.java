/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.limits;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Predicate;

import org.ferrule.chart.words.Phrases;
import org.ferrule.engine.plan.CaseFigures;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.escalation.plan.Rung;
import org.ferrule.model.CaseDocument;
import org.ferrule.thresholds.Source;

/**
 * The limits and scores of a case: creatinine clearance, each published limit of contrast medium, the levels of dose, the
 * scores of the lesion. What is not stated is named, and never guessed.
 */
public final class CaseLimits {
    private final Phrases phrases = Phrases.beside(CaseLimits.class, "limits");
    private final CaseFigures figures;
    private final Plan plan;

    private CaseLimits(CaseDocument file, Plan plan) {
        this.figures = new CaseFigures(file);
        this.plan = plan;
    }

    /** All of them, each with its source. */
    public static List<CaseLimit> of(CaseDocument file, Plan plan) {
        CaseLimits limits = new CaseLimits(file, plan);
        List<CaseLimit> all = new ArrayList<>(limits.contrast().all());
        all.addAll(new DoseLevels(limits.phrases, plan).all());
        all.addAll(new LesionScores(limits.phrases, limits.figures).all());
        return List.copyOf(all);
    }

    /** In few lines, for paper: the span of the limits that disagree, the next level of dose, the scores. */
    public static List<String> brief(CaseDocument file, Plan plan) {
        CaseLimits limits = new CaseLimits(file, plan);
        List<String> lines = new ArrayList<>(limits.contrast().brief());
        lines.addAll(new DoseLevels(limits.phrases, plan).brief());
        new LesionScores(limits.phrases, limits.figures).all().forEach(score -> lines.add(score.line()));
        return List.copyOf(lines);
    }

    private ContrastVolumes contrast() {
        return new ContrastVolumes(phrases, figures, plan);
    }

    /** A source with how it is known. */
    static String words(Source source) {
        return source.mark() == Source.Mark.FROM_MEMORY ? source.citation() + " (" + source.mark().words() + ")"
                : source.citation();
    }

    /** The number of the first step at whose end something holds, if every step is taken. */
    static OptionalInt firstStep(Plan plan, Predicate<Rung> holds) {
        return plan.rungs().stream().filter(holds).mapToInt(Rung::number).findFirst();
    }
}
