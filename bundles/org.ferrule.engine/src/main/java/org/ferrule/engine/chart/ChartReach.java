/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.chart;

import java.util.List;
import java.util.Optional;

import org.ferrule.engine.translate.VesselWay;
import org.ferrule.model.FitChart;
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
                : new VesselWay(message -> problems.add(new ChartProblem("lesion", message))).end(chart.getLesion());
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
