/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.consumer;

import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.ferrule.chart.words.AnswerWords;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.chart.words.UnitPreferences;
import org.ferrule.fit.FitSolver;
import org.ferrule.fit.device.Contour;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.LumenSection;
import org.ferrule.fit.device.ShaftSection;
import org.ferrule.fit.device.SourceRef;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.rules.ClearanceRule;
import org.ferrule.fit.rules.FigureClass;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.fit.rules.Span;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;

/** Asks the kernel, alone, whether a plain shaft goes through a plain lumen. */
public final class Consumer {
    private static final Length TOLERANCE = Length.of("0.01", LengthUnit.MILLIMETRE);
    private static final Length REQUIRED = Length.of("0.03", LengthUnit.MILLIMETRE);
    private static final Dimension LENGTH = Dimension.parse("100 cm");

    private Consumer() {
    }

    /**
     * Prints the answer in words.
     *
     * @param words the inner diameter and the outer diameter as printed
     */
    public static void main(String... words) {
        RuleSet rules = rules();
        Device guide = guide(Dimension.parse(words[0]));
        Device catheter = catheter(Dimension.parse(words[1]));
        FitQuestion question = new FitQuestion(ReadDevice.of(guide, rules), guide.lumen("main"),
                ReadDevice.of(catheter, rules), Direction.TIP_FIRST, Optional.empty(), rules);
        ReasonWords reasons = ReasonWords.english(UnitPreferences.in(LengthUnit.MILLIMETRE));
        System.out.println(new AnswerWords(reasons).summary(FitSolver.standard(List.of()).answer(question).in()));
    }

    private static RuleSet rules() {
        return new RuleSet("rules of the example", "1",
                List.of(span(FigureClass.INNER_DIAMETER), span(FigureClass.OUTER_DIAMETER)),
                List.of(new ClearanceRule(Set.of(), Set.of(), REQUIRED, SourceRef.NONE)), List.of(),
                Optional.empty(), Optional.empty());
    }

    private static Span span(FigureClass figure) {
        return new Span(figure, Set.of(), TOLERANCE, TOLERANCE, SourceRef.NONE);
    }

    private static Device guide(Dimension innerDiameter) {
        LumenSection whole = new LumenSection("", Length.ZERO, LENGTH.label(), Optional.of(innerDiameter),
                Optional.of(innerDiameter), SourceRef.NONE);
        Lumen lumen = new Lumen("main", Lumen.Use.WORKING, Lumen.Opening.HUB, Length.ZERO, LENGTH.label(),
                List.of(whole));
        return device("guide", DeviceKind.GUIDE_CATHETER, List.of(), List.of(lumen));
    }

    private static Device catheter(Dimension outerDiameter) {
        ShaftSection shaft = ShaftSection.plain("shaft", Length.ZERO, LENGTH.label(),
                new Contour.Round(Optional.of(outerDiameter)));
        return device("catheter", DeviceKind.MICROCATHETER, List.of(shaft), List.of());
    }

    private static Device device(String id, DeviceKind kind, List<ShaftSection> sections, List<Lumen> lumens) {
        return new Device(id, id, kind, "", Optional.of(LENGTH), Optional.empty(), sections, lumens, false,
                List.of());
    }
}
