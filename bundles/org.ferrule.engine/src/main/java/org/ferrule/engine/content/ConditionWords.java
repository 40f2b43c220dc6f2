/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.content;

import java.util.ArrayList;
import java.util.List;

import org.ferrule.chart.words.LengthWords;
import org.ferrule.chart.words.UnitPreferences;
import org.ferrule.engine.chart.AssembledChart;
import org.ferrule.fit.matrix.MatrixQuestion;
import org.ferrule.fit.passage.Direction;
import org.ferrule.model.FitChart;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;

/** The conditions of a chart in words. */
final class ConditionWords {
    private final LengthWords words = new LengthWords(UnitPreferences.in(LengthUnit.MILLIMETRE));
    private final List<String> lines = new ArrayList<>();

    static List<String> of(FitChart chart, AssembledChart assembled) {
        ConditionWords conditions = new ConditionWords();
        if (assembled.question().direction() == Direction.OVER_WIRE_TAIL) {
            conditions.overWire(assembled.question());
        } else {
            conditions.tipFirst(chart, assembled);
        }
        return conditions.lines;
    }

    private void overWire(MatrixQuestion question) {
        lines.add("loaded over the tail of the wire in place");
        Length ahead = question.reach().orElseGet(question.rules()::wireAheadOrFail);
        lines.add(words.length(ahead) + " of wire stays beyond the tip");
    }

    private void tipFirst(FitChart chart, AssembledChart assembled) {
        lines.add("tip first, one device at a time");
        lines.add(
                assembled.question().reach().map(r -> "to " + words.length(r) + " beyond the outer tip" + lesion(chart))
                        .orElse("all the way in, hub to hub"));
        lines.add(assembled.wire().map(w -> "over the wire \"" + w.name() + "\"")
                .orElse("each over the wire that its papers name"));
    }

    private static String lesion(FitChart chart) {
        boolean stated = chart.getConditions() != null && chart.getConditions().getReach() != null;
        if (stated || chart.getLesion() == null) {
            return "";
        }
        String name = ChartContents.text(chart.getLesion().getName());
        return name.isEmpty() ? " (far end of the lesion)" : " (far end of \"" + name + "\")";
    }
}
