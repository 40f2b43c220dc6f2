/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.benchmarks;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.ferrule.fit.FitSolver;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.SourceRef;
import org.ferrule.fit.matrix.MatrixLine;
import org.ferrule.fit.matrix.MatrixQuestion;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.rules.AfterUseRule;
import org.ferrule.fit.rules.ClearanceRule;
import org.ferrule.fit.rules.FigureClass;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.fit.rules.Span;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;

/** What is asked about usual devices: tip first, hub to hub, under rules as the demo has them. */
final class UsualQuestion {
    private static final SourceRef HOUSE = SourceRef.NONE;

    private UsualQuestion() {
    }

    static RuleSet rules() {
        List<Span> spans = new ArrayList<>();
        for (FigureClass figure : FigureClass.values()) {
            spans.add(new Span(figure, Set.of(), inches("0.0005"), inches("0.001"), HOUSE));
        }
        return new RuleSet("rules of the benchmark", "1", spans,
                List.of(new ClearanceRule(Set.of(), Set.of(), inches("0.0015"), HOUSE),
                        new ClearanceRule(Set.of(DeviceKind.GUIDE_CATHETER), Set.of(DeviceKind.ROTATIONAL_BURR),
                                inches("0.004"), HOUSE)),
                List.of(new AfterUseRule(Set.of(), new BigDecimal("1.1"), new BigDecimal("1.2"),
                        new BigDecimal("1.3"), HOUSE)),
                Optional.of(Length.of("30", LengthUnit.MILLIMETRE)), Optional.empty());
    }

    private static Length inches(String value) {
        return Length.of(value, LengthUnit.INCH);
    }

    /** The question about devices that are read anew. */
    static MatrixQuestion of(List<Device> outer, List<Device> inner, FitSolver solver) {
        RuleSet rules = rules();
        List<MatrixLine> lines = outer.stream().map(d -> new MatrixLine(ReadDevice.of(d, rules), d.lumens().get(0)))
                .toList();
        List<ReadDevice> columns = inner.stream().map(d -> ReadDevice.of(d, rules)).toList();
        return new MatrixQuestion(lines, columns, Direction.TIP_FIRST, Optional.empty(), rules, solver);
    }

    /** The question about so many usual devices on either side, which may all be different. */
    static MatrixQuestion of(int outer, int inner, boolean areDifferent) {
        UsualDevices devices = new UsualDevices(1, areDifferent);
        return of(devices.outer(outer), devices.inner(inner),
                FitSolver.standard(devices.bench(200, outer, inner)));
    }
}
