/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.validation;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.ferrule.fit.FitSolver;
import org.ferrule.fit.device.BenchResult;
import org.ferrule.fit.device.Claim;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.device.SourceRef;
import org.ferrule.fit.passage.Conditions;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.Occupant;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;

/**
 * Facts of the trade by size designation, with the figures that are typical of the sizes. Figures taken as exact must
 * give the verdict itself; under a laboratory's rule set a "tight" is a more careful answer and no contradiction.
 */
final class SizeTable implements TableCheck {
    private static final Length REQUIRED = Length.of("0.025", LengthUnit.MILLIMETRE);
    /** That a tip of 2.0 mm, which would go through 0.081 in, needs 8 Fr is what makers say, not what figures tell. */
    private static final Set<String> NOT_OF_FIGURES = Set.of("laser-20-7");
    /** The geometry leaves 0.17 and 0.20 mm; the bench tells them apart. */
    private static final Map<String, Boolean> ON_THE_BENCH = Map.of("burr-125-extension-142", false,
            "burr-125-extension-145", true);
    private static final String OLD_RULE = "burr-175-6-old-rule";

    private final Map<String, CheckRow> figures = new HashMap<>();
    private final RuleSet rules;
    private final Optional<String> title;

    private SizeTable(List<CheckRow> figures, RuleSet rules, Optional<String> title) {
        figures.forEach(row -> this.figures.put(row.get("designation"), row));
        this.rules = rules;
        this.title = title;
    }

    /** With figures taken as exact. */
    static SizeTable exact(List<CheckRow> figures) {
        return new SizeTable(figures, ExactRules.requiring(REQUIRED), Optional.empty());
    }

    /** Under a rule set. */
    static SizeTable under(RuleSet rules, List<CheckRow> figures) {
        return new SizeTable(figures, rules, Optional.of(rules.title()));
    }

    @Override
    public Optional<CheckResult> check(CheckRow row) {
        if (NOT_OF_FIGURES.contains(row.id())) {
            return Optional.empty();
        }
        Verdict verdict = FitSolver.standard(bench(row)).answer(question(row)).in(Phase.IN).verdict();
        String subject = row.get("inner") + " in " + row.get("outer") + title.map(t -> ", under " + t).orElse("");
        return Optional.of(CheckResult.of(row, subject, compared(row.get("expected"), verdict)));
    }

    private Comparison compared(String expected, Verdict verdict) {
        if (title.isEmpty()) {
            return Comparison.same(expected, verdict.word());
        }
        Verdict contrary = expected.equals(Verdict.FITS.word()) ? Verdict.BLOCKED : Verdict.FITS;
        return new Comparison(expected, verdict.word(), "anything but " + contrary.word(), verdict != contrary);
    }

    private FitQuestion question(CheckRow row) {
        CheckRow outerFigures = figuresOf(row.get("outer"));
        CheckRow innerFigures = figuresOf(row.get("inner"));
        Device outer = new CheckDevice(row.get("outer"), kind(outerFigures)).length("10 cm")
                .lumen("10 cm", outerFigures.get("lumen")).device();
        Device inner = inner(row, innerFigures);
        String beside = innerFigures.get("beside") + outerFigures.get("beside");
        List<Occupant> occupants = beside.isEmpty() ? List.of()
                : List.of(PassageTable.beside(beside, "20 cm", "5 cm", rules));
        boolean wire = inner.kind() == DeviceKind.GUIDEWIRE;
        return new FitQuestion(ReadDevice.of(outer, rules), outer.lumens().get(0), ReadDevice.of(inner, rules),
                wire ? Direction.OVER_WIRE_TAIL : Direction.TIP_FIRST, Optional.empty(),
                new Conditions(occupants, Optional.empty(), List.of(), false), rules);
    }

    private CheckRow figuresOf(String designation) {
        CheckRow found = figures.get(designation);
        if (found == null) {
            throw new IllegalArgumentException("no typical figures for \"" + designation + "\"");
        }
        return found;
    }

    private static DeviceKind kind(CheckRow row) {
        return DeviceKind.ofWord(row.get("kind"));
    }

    private static Device inner(CheckRow row, CheckRow figures) {
        String[] sections = figures.get("sections").split("; ");
        CheckDevice device = new CheckDevice(row.get("inner"), kind(figures)).length("20 cm")
                .section("distal", "0 cm", "1 cm", sections[0])
                .section("proximal", "1 cm", "20 cm", sections[sections.length - 1]);
        return row.id().equals(OLD_RULE) ? device.claim(oldRule()).device() : device.device();
    }

    /** The old rule is a maker's minimum of burr diameter + 0.004 in; it disagrees with the textbook's row. */
    private static Claim oldRule() {
        return new Claim(Claim.Type.MINIMUM_LUMEN, Optional.of(Dimension.parse("0.073 in")),
                Set.of(DeviceKind.GUIDE_CATHETER), List.of(), List.of(), Optional.empty(), false, Set.of(Phase.IN),
                SourceRef.NONE);
    }

    private static List<BenchResult> bench(CheckRow row) {
        Boolean passed = ON_THE_BENCH.get(row.id());
        return passed == null ? List.of()
                : List.of(new BenchResult(row.get("outer"), "", row.get("inner"), Optional.empty(), passed,
                        Set.of(Phase.IN), 0, SourceRef.NONE));
    }
}
