/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.validation;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.fit.FitSolver;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.Conditions;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.Limiting;
import org.ferrule.fit.passage.Occupant;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.fit.verdict.Clearance;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;

/** Passages: verdict, nominal clearance to a nanometre, and the section that limits. */
final class PassageTable implements TableCheck {
    private static final String OVER_WIRE = "over wire tail";
    private static final FitSolver SOLVER = FitSolver.standard(List.of());

    @Override
    public Optional<CheckResult> check(CheckRow row) {
        PhaseAnswer answer = SOLVER.answer(question(row)).in(Phase.IN);
        Comparison comparison = Comparison.same(row.get("verdict"), answer.verdict().word());
        if (!row.get("clearanceMm").isEmpty()) {
            double nominalMm = answer.clearance().map(Clearance::nominal).map(Length::mm).orElse(Double.NaN);
            comparison = comparison.and(Comparison.toLastDigit(row.get("clearanceMm"), nominalMm));
        }
        if (!row.get("limiting").isEmpty()) {
            comparison = comparison.and(Comparison.same(row.get("limiting"),
                    answer.limiting().map(Limiting::deviceSection).orElse("")));
        }
        return Optional.of(CheckResult.of(row, row.get("question"), comparison));
    }

    private static FitQuestion question(CheckRow row) {
        RuleSet rules = ExactRules.requiring(Dimension.parse(row.get("required")).label());
        Device outer = new CheckDevice("outer", DeviceKind.OTHER).length(row.get("lumenLength"))
                .lumen(row.get("lumenLength"), row.get("lumen")).device();
        boolean overWire = row.get("direction").equals(OVER_WIRE);
        String reach = overWire ? row.get("stopsAt") : row.get("reach");
        return new FitQuestion(ReadDevice.of(outer, rules), outer.lumens().get(0), ReadDevice.of(inner(row), rules),
                overWire ? Direction.OVER_WIRE_TAIL : Direction.TIP_FIRST,
                reach.isEmpty() ? Optional.empty() : Optional.of(Dimension.parse(reach).label()),
                new Conditions(occupants(row, rules), Optional.empty(), List.of(), false), rules);
    }

    private static Device inner(CheckRow row) {
        CheckDevice device = new CheckDevice("inner", DeviceKind.OTHER);
        for (String section : row.get("device").split("; ")) {
            String[] parts = section.split(" to |: ");
            String name = Dimension.parse(parts[0]).label() + " to " + Dimension.parse(parts[1]).label();
            device.section(name, parts[0], parts[1], parts[2]).length(parts[1]);
        }
        return row.get("wire").isEmpty() ? device.device()
                : device.wire(row.get("wire"), row.get("wirePort")).device();
    }

    private static List<Occupant> occupants(CheckRow row, RuleSet rules) {
        return Stream.of(row.get("occupants").split("; ")).filter(text -> !text.isEmpty())
                .map(diameter -> beside(diameter, "200 cm", "10 cm", rules)).toList();
    }

    /** A shaft that lies in the lumen along its whole length. */
    static Occupant beside(String diameter, String length, String ahead, RuleSet rules) {
        Device device = new CheckDevice("beside", DeviceKind.OTHER).length(length)
                .section("shaft", "0 mm", length, diameter).device();
        return new Occupant(ReadDevice.of(device, rules), Dimension.parse(ahead).label(), false);
    }
}
