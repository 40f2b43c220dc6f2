/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.content;

import java.util.ArrayList;
import java.util.List;

import org.ferrule.chart.words.ConditionWords;
import org.ferrule.chart.words.LengthWords;
import org.ferrule.chart.words.Phrases;
import org.ferrule.chart.words.UnitPreferences;
import org.ferrule.engine.chart.AssembledChart;
import org.ferrule.fit.matrix.MatrixQuestion;
import org.ferrule.fit.passage.Direction;
import org.ferrule.model.FitChart;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;

/** The conditions of a chart in words, each of them: who reads its answers must know under what they hold. */
final class ChartConditionWords {
    private final LengthWords words = new LengthWords(UnitPreferences.in(LengthUnit.MILLIMETRE));
    private final Phrases phrases = Phrases.english();
    private final List<String> lines = new ArrayList<>();

    private ChartConditionWords() {
    }

    static List<String> of(FitChart chart, AssembledChart assembled) {
        ChartConditionWords words = new ChartConditionWords();
        if (assembled.question().direction() == Direction.OVER_WIRE_TAIL) {
            words.overWire(assembled.question());
        } else {
            words.tipFirst(chart, assembled);
        }
        words.lines.addAll(ConditionWords.of(assembled.question().conditions()));
        return words.lines;
    }

    private void overWire(MatrixQuestion question) {
        say("overWire");
        say("wireAhead", words.length(question.reach().orElseGet(question.rules()::wireAheadOrFail)));
    }

    private void tipFirst(FitChart chart, AssembledChart assembled) {
        say(assembled.question().conditions().alone() ? "tipFirst.alone" : "tipFirst");
        boolean protrudes = assembled.question().conditions().through()
                .filter(t -> t.protrusion().compareTo(Length.ZERO) > 0).isPresent();
        assembled.question().reach().ifPresentOrElse(
                r -> say(protrudes ? "reach.extension" : "reach", words.length(r), lesion(chart)),
                () -> say("hubToHub"));
        assembled.wire().ifPresentOrElse(w -> say("wire", w.name()), () -> say("ownWire"));
    }

    private String lesion(FitChart chart) {
        boolean stated = chart.getConditions() != null && chart.getConditions().getReach() != null;
        if (stated || chart.getLesion() == null) {
            return "";
        }
        String name = ChartContents.text(chart.getLesion().getName());
        return name.isEmpty() ? phrase("lesion.unnamed") : phrase("lesion", name);
    }

    private void say(String key, String... values) {
        lines.add(phrase(key, values));
    }

    private String phrase(String key, String... values) {
        return phrases.fill("condition." + key, values);
    }
}
