/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.sums;

import java.util.List;
import java.util.Map;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.Status;
import org.ferrule.calc.Calculator;
import org.ferrule.calc.catalogue.Calculators;
import org.ferrule.calc.input.Arguments;
import org.ferrule.chart.drawing.EvidenceDrawing;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.fit.evidence.Evidence;
import org.ferrule.picture.Picture;
import org.ferrule.ui.fit.answer.ShownUnits;
import org.ferrule.ui.help.HelpPicture;

/** The picture of a sum: two shafts of balloons and two wires side by side. */
public class SumExample implements HelpPicture {

    private static final double HEIGHT_MM = 46;
    private static final String CALCULATOR = "pack";
    private static final Map<String, List<String>> GIVEN = Map.of("device",
            List.of("2.7 Fr", "2.6 Fr", "0.014 in", "0.014 in"));

    @Override
    public Picture draw(double widthMm) throws CoreException {
        Calculator calculator = new Calculators().find(CALCULATOR)
                .orElseThrow(() -> new CoreException(Status.error("There is no calculator " + CALCULATOR)));
        Evidence evidence = SumPicture.of(Sum.of(calculator, Arguments.of(calculator.parameters(), GIVEN)))
                .orElseThrow(() -> new CoreException(Status.error("Nothing can be drawn of " + CALCULATOR)));
        return new EvidenceDrawing(ReasonWords.english(ShownUnits.now())).of(evidence, widthMm, HEIGHT_MM);
    }
}
