/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.chart.page.Edition;
import org.ferrule.chart.words.UnitPreferences;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.engineering.sensitivity.Influence;
import org.ferrule.fit.engineering.size.RequiredSize;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.picture.Caption;
import org.ferrule.picture.Document;
import org.ferrule.picture.DocumentInfo;
import org.ferrule.picture.Picture;
import org.ferrule.profile.required.RequiredLanes;
import org.ferrule.profile.required.RequiredPlot;
import org.ferrule.profile.required.SensitivityPlot;
import org.ferrule.profile.words.ProfileWords;
import org.ferrule.quantity.LengthUnit;

/** An engineer's answers as plots, with rule set and date below them. */
public final class EngineeringPages {
    private static final double WIDTH_MM = 200;
    private static final double HEIGHT_MM = 90;
    private static final int MOST_BARS = 25;

    private EngineeringPages() {
    }

    /** Verdicts along a diameter: a page going in, a page coming out. */
    public static Document required(RequiredSize required, RuleSet rules) {
        ProfileWords words = words();
        List<Picture> plots = Stream.of(Phase.values()).map(phase -> RequiredPlot
                .picture(new RequiredLanes(required, phase), Optional.empty(), words, WIDTH_MM, HEIGHT_MM)).toList();
        return pages(plots, new Edition(rules.title(), rules.revision()), words);
    }

    /** Figures by their weight. */
    public static Document sensitivity(List<Influence> ranked, Edition rules) {
        ProfileWords words = words();
        return pages(List.of(SensitivityPlot.picture(ranked.stream().limit(MOST_BARS).toList(), words, WIDTH_MM)),
                rules, words);
    }

    private static ProfileWords words() {
        return ProfileWords.english(UnitPreferences.in(LengthUnit.MILLIMETRE));
    }

    private static Document pages(List<Picture> plots, Edition rules, ProfileWords words) {
        OffsetDateTime now = OffsetDateTime.now();
        String edition = rules.revision().isEmpty() ? rules.title()
                : words.phrases().fill("page.edition", rules.title(), rules.revision());
        Caption caption = Caption.of("", words.phrases().fill("page.rules", edition), now.toLocalDate().toString(),
                words.phrases().get("page.caution"));
        return new Document(DocumentInfo.of(plots.get(0).title(), now), plots.stream().map(caption::below).toList());
    }
}
