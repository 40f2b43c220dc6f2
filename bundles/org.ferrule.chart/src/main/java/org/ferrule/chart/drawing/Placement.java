/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import java.util.List;
import java.util.Optional;

import org.ferrule.fit.device.Phase;
import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.Limiting;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.passage.Stretch;
import org.ferrule.fit.passage.Taper;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.quantity.Length;

/**
 * Where a device lies in a lumen in a drawing, in mm from the lumen's proximal entry: where it stops if it does; else
 * as far as it goes while the stretches that decide still lie in each other.
 *
 * @param tip of the inner device
 * @param limit the place that decides; absent when no known figures meet
 */
record Placement(double tip, Optional<Double> limit) {

    static Placement of(FitQuestion question, PhaseAnswer answer, Phase phase) {
        double end = tipAtEnd(question);
        return answer.limiting().map(limiting -> stops(answer) ? exact(limiting) : slid(question, limiting, phase, end))
                .orElseGet(() -> new Placement(end, Optional.empty()));
    }

    private static boolean stops(PhaseAnswer answer) {
        return answer.reasons().stream().anyMatch(r -> r.code() == ReasonCode.STOPS_SHORT
                || r.code() == ReasonCode.CAUGHT_ON_WITHDRAWAL);
    }

    private static Placement exact(Limiting limiting) {
        double place = limiting.lumenStation().mm();
        return new Placement(place + limiting.deviceStation().mm(), Optional.of(place));
    }

    /** Along two stretches of one diameter each, every place decides alike: shows the last of them. */
    private static Placement slid(FitQuestion question, Limiting limiting, Phase phase, double end) {
        Optional<Stretch> bore = constant(question.bore(), limiting.lumenStation(),
                limiting.lumenDiameter());
        Optional<Stretch> outline = constant(question.inner().outline(phase), limiting.deviceStation(),
                limiting.deviceDiameter());
        if (bore.isEmpty() || outline.isEmpty()) {
            return exact(limiting);
        }
        double x0 = bore.get().from().mm();
        double x1 = bore.get().to().mm();
        double s0 = outline.get().from().mm();
        double s1 = outline.get().to().mm();
        double tip = Math.max(x0 + s0, Math.min(x1 + s1, end));
        double left = Math.max(x0, tip - s1);
        double right = Math.min(x1, tip - s0);
        return new Placement(tip, Optional.of((left + right) / 2));
    }

    private static Optional<Stretch> constant(List<Stretch> stretches, Length station, Figure figure) {
        return stretches.stream()
                .filter(s -> s.from().compareTo(station) <= 0 && s.to().compareTo(station) >= 0)
                .filter(s -> s.diameter().filter(Taper::isConstant).filter(t -> t.start().equals(figure)).isPresent())
                .findFirst();
    }

    private static double tipAtEnd(FitQuestion question) {
        Length lumen = question.lumen().length();
        Length travel = question.travel().orElse(lumen);
        if (question.direction() == Direction.TIP_FIRST) {
            return travel.mm();
        }
        Length wire = question.inner().device().insertableLength().orElse(travel);
        return lumen.minus(travel).plus(wire).mm();
    }
}
