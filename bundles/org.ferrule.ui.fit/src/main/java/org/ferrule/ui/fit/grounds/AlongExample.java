/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.grounds;

import org.ferrule.chart.drawing.LongitudinalDrawing;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.picture.Picture;
import org.ferrule.ui.fit.answer.AskedPair;

/** The drawing along the devices. */
public class AlongExample extends ExamplePair {

    private static final double HEIGHT_MM = 50;

    @Override
    Picture draw(AskedPair pair, PhaseAnswer answer, ReasonWords words, double widthMm) {
        return new LongitudinalDrawing(words).ofPair(pair.question(), answer, Phase.IN, widthMm, HEIGHT_MM);
    }
}
