/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.page;

import java.util.Objects;

import org.ferrule.chart.page.Basis;
import org.ferrule.chart.page.Imprint;
import org.ferrule.chart.page.PaperFormat;
import org.ferrule.profile.ProfileComparison;
import org.ferrule.profile.plot.View;
import org.ferrule.profile.words.ProfileWords;

/**
 * All that the pages of a comparison show.
 *
 * @param imprint title and date; author, audience and revision may be empty
 * @param basis rule set, libraries, and as conditions what else is to be said
 * @param comparison of devices
 * @param view of the plot
 * @param words in which it is said
 * @param paper on which it is laid out
 */
public record ProfileContent(Imprint imprint, Basis basis, ProfileComparison comparison, View view, ProfileWords words,
        PaperFormat paper) {
    public ProfileContent {
        Objects.requireNonNull(imprint, "imprint");
        Objects.requireNonNull(basis, "basis");
        Objects.requireNonNull(comparison, "comparison");
        Objects.requireNonNull(view, "view");
        Objects.requireNonNull(words, "words");
        Objects.requireNonNull(paper, "paper");
    }
}
