/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.opinion;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.figure.FigureReader;
import org.ferrule.fit.rules.AfterUseRule;
import org.ferrule.fit.rules.FigureClass;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.Sample;

/** All that is drawn for the parts of a question, in the order in which it was asked for. */
final class Draws {
    private final RuleSet rules;
    private final FigureReader reader;
    private final List<Draw> list = new ArrayList<>();
    private boolean centreAssumed;

    Draws(RuleSet rules) {
        this.rules = rules;
        this.reader = new FigureReader(rules);
    }

    /** What is drawn, in the order of the values. */
    List<Draw> list() {
        return list;
    }

    /** Whether a centre is only assumed anywhere. */
    boolean centreAssumed() {
        return centreAssumed;
    }

    double[] values(ToDoubleFunction<Draw> lane) {
        return list.stream().mapToDouble(lane).toArray();
    }

    /** A printed figure, drawn once for each part. */
    ToDoubleFunction<double[]> printed(Dimension printed, Draw.Of of, String where, FigureClass figures,
            DeviceKind kind) {
        Figure figure = reader.read(printed, figures, kind).figure();
        return add(Draw.diameter(of, where, figure, printed.sample().map(Sample::standardDeviation)),
                figure.centreAssumed());
    }

    /** A diameter that was read already. */
    ToDoubleFunction<double[]> diameter(String where, Figure figure) {
        return add(Draw.diameter(Draw.Of.SHAFT, where, figure, Optional.<Length>empty()), figure.centreAssumed());
    }

    /** How much a folded balloon grows. */
    ToDoubleFunction<double[]> growth(String where, DeviceKind kind) {
        AfterUseRule rule = rules.growth(kind);
        return add(Draw.growth(where, rule.low(), rule.centre(), rule.high()), true);
    }

    private ToDoubleFunction<double[]> add(Draw draw, boolean assumed) {
        int index = list.size();
        list.add(draw);
        centreAssumed |= assumed;
        return drawn -> drawn[index];
    }
}
