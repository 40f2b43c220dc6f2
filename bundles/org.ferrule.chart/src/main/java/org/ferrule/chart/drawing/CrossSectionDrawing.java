/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import org.ferrule.chart.words.AnswerWords;
import org.ferrule.chart.words.Printable;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.picture.Picture;
import org.ferrule.picture.PictureBuilder;

/**
 * Cross-sections to scale at the place that decides: the lumen with the ring in which its wall may lie, what lies in
 * it, and the clearance. Groups are named for hit-testing: {@code lumen}, {@code shaft}, {@code wire},
 * {@code clearance}.
 */
public final class CrossSectionDrawing {
    private final ReasonWords words;

    /** Drawings with these words and units. */
    public CrossSectionDrawing(ReasonWords words) {
        this.words = words;
    }

    /** What lies in the lumen where the answer is decided; where no known figures meet, what is not known. */
    public Picture ofPair(FitQuestion question, PhaseAnswer answer, Phase phase, double widthMm, double heightMm) {
        PictureBuilder builder = new PictureBuilder();
        String title = Printable.line(words.phrases().fill("drawing.across",
                answer.limiting().map(l -> words.section(l.deviceSection())).orElse(
                        question.inner().device().name()),
                answer.limiting().map(l -> words.bore(l.lumenSection())).orElse(
                        question.outer().device().name())));
        CrossScene scene = new CrossScene(question, answer, words, new Zones(widthMm, heightMm));
        scene.title(builder, title);
        if (answer.limiting().isPresent()) {
            scene.known(builder, Occupants.of(question, phase, answer.limiting().get()));
        } else {
            scene.unknown(builder);
        }
        return builder.picture(widthMm, heightMm, title)
                .described(Printable.line(new AnswerWords(words).summary(answer)));
    }
}
