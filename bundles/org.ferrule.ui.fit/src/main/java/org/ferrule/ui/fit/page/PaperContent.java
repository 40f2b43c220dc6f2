/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.page;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.ferrule.chart.page.ChartContent;
import org.ferrule.engine.content.ChartContents;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.FitChart;
import org.ferrule.model.RuleSet;
import org.ferrule.ui.fit.chart.LiveAnswers;

/** What the chart shows on paper, with the last good answers. To be used on the display's thread. */
public final class PaperContent {

    private final LiveAnswers answers;

    /** Shows these answers. */
    public PaperContent(LiveAnswers answers) {
        this.answers = answers;
    }

    /** Returns the content as it stands now; nothing before there are answers, or without the rule set. */
    public Optional<ChartContent> now() {
        Optional<FitChart> chart = answers.chart();
        Optional<RuleSet> rules = chart.map(FitChart::getRules).flatMap(answers.documents()::rules);
        if (chart.isEmpty() || rules.isEmpty()) {
            return Optional.empty();
        }
        List<DeviceLibrary> libraries = chart.get().getLibraries().stream()
                .flatMap(path -> answers.documents().library(path).stream()).toList();
        return answers.shown().map(
                solved -> ChartContents.of(chart.get(), solved, rules.get(), libraries, LocalDate.now(),
                        answers.signedNow()));
    }
}
