/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import java.util.Locale;
import java.util.Optional;

import org.ferrule.chart.words.ReasonWords;
import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.passage.Taper;

/** Words about the bands of a drawing. */
final class BandWords {
    private BandWords() {
    }

    /** The nominal diameter of a shaft, from its right to its left end where it tapers; or that it is not stated. */
    static String diameter(ReasonWords words, Band band) {
        Optional<Taper> taper = band.diameter();
        if (taper.isEmpty()) {
            return words.phrases().get("drawing.notStated");
        }
        String right = words.lengths().device(taper.get().end().centre());
        return taper.get().isConstant() ? right
                : right + " \u2192 " + words.lengths().device(taper.get().start().centre());
    }

    /** Name, stations and diameters of a shaft whose tip lies at 0. */
    static String tooltip(ReasonWords words, Band band) {
        return words.phrases().fill("drawing.tooltip", words.section(band.name()), cm(band.to()), cm(band.from()),
                range(words, band));
    }

    /** The diameter at the distal end, with its ends; or that it is not stated. */
    static String range(ReasonWords words, Band band) {
        return band.figureAt(band.to()).map(figure -> range(words, figure))
                .orElse(words.phrases().get("drawing.notStated"));
    }

    /** A diameter with its ends. */
    static String range(ReasonWords words, Figure figure) {
        return words.phrases().fill("drawing.range", words.lengths().plain(figure.centre()),
                words.lengths().lowEnd(figure.low()), words.lengths().highEnd(figure.high()));
    }

    private static String cm(double place) {
        return String.format(Locale.ROOT, "%.1f", Math.abs(place) / 10);
    }
}
