/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.chart;

import java.util.List;
import java.util.Optional;

import org.ferrule.model.FitChart;
import org.ferrule.model.Lesion;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;

/** How far beyond the outer tip a chart asks its devices to come: as stated, or to the far end of its lesion. */
final class ChartReach {
    private ChartReach() {
    }

    static Optional<Length> of(FitChart chart, List<ChartProblem> problems) {
        Dimension stated = chart.getConditions() == null ? null : chart.getConditions().getReach();
        if (stated != null) {
            return readable(stated, "reach", "the reach", problems);
        }
        return chart.getPath() == null || chart.getLesion() == null ? Optional.empty()
                : toLesion(chart.getLesion(), problems);
    }

    private static Optional<Length> toLesion(Lesion lesion, List<ChartProblem> problems) {
        if (lesion.getAt() == null || lesion.getLength() == null) {
            problems.add(new ChartProblem("lesion", "the lesion has no place or no length, so the reach is not known"));
            return Optional.empty();
        }
        Optional<Length> at = readable(lesion.getAt(), "lesion", "the place of the lesion", problems);
        Optional<Length> length = readable(lesion.getLength(), "lesion", "the length of the lesion", problems);
        return at.flatMap(a -> length.map(a::plus));
    }

    private static Optional<Length> readable(Dimension printed, String place, String what,
            List<ChartProblem> problems) {
        if (!printed.readable()) {
            problems.add(new ChartProblem(place, what + " cannot be read: \"" + printed.text() + "\""));
            return Optional.empty();
        }
        return Optional.of(printed.label());
    }
}
