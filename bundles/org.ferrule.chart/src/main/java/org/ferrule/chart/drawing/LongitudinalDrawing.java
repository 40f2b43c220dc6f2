/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import java.util.ArrayList;
import java.util.List;

import org.ferrule.chart.words.AnswerWords;
import org.ferrule.chart.words.ConditionWords;
import org.ferrule.chart.words.Printable;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.picture.Picture;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.TextLayout;

/**
 * Longitudinal sections. Diameters are drawn to one scale and lengths to another, which the caption says; long
 * stretches are broken so that short ones can be seen. Groups are named for hit-testing: {@code section:NAME},
 * {@code inner:NAME} (within a section that is not round), {@code lumen:NAME}, {@code marker:NUMBER}, {@code port},
 * {@code wire}, {@code limiting}; of what lies there already {@code occupant:ID}, {@code tube:ID}, {@code rod:ID},
 * {@code collar}.
 */
public final class LongitudinalDrawing {
    private final ReasonWords words;

    /** Drawings with these words and units. */
    public LongitudinalDrawing(ReasonWords words) {
        this.words = words;
    }

    /**
     * A device by itself.
     *
     * @param rules by which its figures are read
     * @param markers on its shaft
     */
    public Picture ofDevice(ReadDevice device, RuleSet rules, List<MarkerBand> markers, double widthMm,
            double heightMm) {
        Zones zones = new Zones(widthMm, heightMm);
        PictureBuilder builder = new PictureBuilder();
        String title = Printable.line(device.device().name());
        title(builder, zones, title);
        DeviceScene scene = new DeviceScene(device, rules, markers, words, zones);
        scene.draw(builder);
        return builder.picture(widthMm, heightMm, title).described(scene.description());
    }

    /** Where things lie in the drawing that {@link #ofDevice} makes of the same. */
    public DeviceLayout layoutOfDevice(ReadDevice device, RuleSet rules, List<MarkerBand> markers, double widthMm,
            double heightMm) {
        return new DeviceLayout(new DeviceScene(device, rules, markers, words, new Zones(widthMm, heightMm)));
    }

    /** The inner device of a question in the lumen, where it stops or where the place that decides can be seen. */
    public Picture ofPair(FitQuestion question, PhaseAnswer answer, Phase phase, double widthMm, double heightMm) {
        Zones zones = new Zones(widthMm, heightMm);
        PictureBuilder builder = new PictureBuilder();
        String title = Printable.line(words.phrases().fill("drawing.pair", question.inner().device().name(),
                question.outer().device().name(), words.phrases().get("phase." + phase)));
        title(builder, zones, title);
        new PairScene(question, answer, phase, words, zones).draw(builder);
        List<String> described = new ArrayList<>(List.of(new AnswerWords(words).summary(answer)));
        described.addAll(ConditionWords.of(question.conditions()));
        return builder.picture(widthMm, heightMm, title).described(Printable.line(String.join("; ", described)));
    }

    private static void title(PictureBuilder builder, Zones zones, String title) {
        builder.lettering(zones.titleStyle()).text(zones.left(), zones.titleBaseline(),
                TextLayout.standard().shorten(title, zones.titleStyle(), zones.right() - zones.left()));
    }
}
