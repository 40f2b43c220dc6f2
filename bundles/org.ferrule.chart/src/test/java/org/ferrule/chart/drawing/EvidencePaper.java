/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import java.util.List;
import org.ferrule.chart.Drawn;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.chart.words.UnitPreferences;
import org.ferrule.fit.evidence.Evidence;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;

/** Evidence drawn on a paper of 110 by 60 mm, and what stands on it. */
final class EvidencePaper {
    static final EvidenceDrawing DRAWING = new EvidenceDrawing(
            ReasonWords.english(UnitPreferences.in(LengthUnit.MILLIMETRE)));

    private EvidencePaper() {
    }

    static Drawn draw(Evidence evidence) {
        return Drawn.of(DRAWING.of(evidence, 110, 60));
    }

    static <T> List<T> marks(Drawn drawn, String group, Class<T> kind) {
        return drawn.marks(group).stream().map(Drawn.Mark::element).filter(kind::isInstance).map(kind::cast).toList();
    }

    static Length mm(String text) {
        return Dimension.parse(text).label();
    }
}
