/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.engine.catalogue.CataloguedDevice;
import org.ferrule.engine.catalogue.ReferenceException;
import org.ferrule.engine.catalogue.UnknownDevices;
import org.ferrule.fit.FitSolver;
import org.ferrule.fit.check.FitCheck;
import org.ferrule.fit.device.BenchResult;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.figure.FigureReader;
import org.ferrule.fit.matrix.MatrixLine;
import org.ferrule.fit.matrix.MatrixQuestion;
import org.ferrule.fit.passage.Conditions;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.OwnWire;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.model.Axis;
import org.ferrule.model.FitChart;
import org.ferrule.model.ModelFactory;
import org.ferrule.quantity.Length;

/**
 * Makes a chart ready to be solved, again and again while it or its libraries are edited: what has not changed keeps
 * its objects, so that only the rest is solved anew. To be used where the model may be read.
 */
public final class ChartAssembler {
    private final List<FitCheck> checks;
    private final ReadDevices devices = new ReadDevices();
    private final UnknownDevices unknown = new UnknownDevices();
    private FitSolver solver;
    private List<BenchResult> solverBench;

    /** An assembler whose charts are solved with these checks. */
    public ChartAssembler(List<FitCheck> checks) {
        this.checks = List.copyOf(checks);
    }

    /** The chart as it stands now. */
    public AssembledChart assemble(FitChart chart, Catalogue catalogue, RuleSet rules) {
        List<ChartProblem> problems = new ArrayList<>();
        Direction direction = direction(chart);
        AxisSelection selection = new AxisSelection(catalogue, problems);
        List<AxisEntry> outer = selection.outer(axis(chart.getOuter()), direction);
        List<CataloguedDevice> inner = selection.inner(axis(chart.getInner()));
        Optional<Device> wire = wire(chart, catalogue, problems);
        Optional<OwnWire> ownWire = ownWire(chart, wire, rules);
        Optional<Length> reach = ChartReach.of(chart, problems);
        devices.begin(rules);
        Conditions conditions = new ConditionReader(catalogue, rules, devices, unknown, problems).read(chart, reach);
        if (direction == Direction.OVER_WIRE_TAIL && !conditions.alone()) {
            problems.add(new ChartProblem("direction",
                    "what else lies in a lumen is asked tip first only, so nothing is asked over the tail of a wire"));
            inner = List.of();
            conditions = Conditions.NONE;
        }
        MatrixQuestion question = new MatrixQuestion(lines(outer), columns(inner, ownWire), direction, reach,
                conditions, rules, solver(catalogue.bench()));
        devices.end();
        return new AssembledChart(question, outer, groups(chart.getOuter(), outer.stream().map(AxisEntry::device)
                .toList()), inner, groups(chart.getInner(), inner), wire, problems);
    }

    private static Direction direction(FitChart chart) {
        boolean overWire = chart.getConditions() != null
                && chart.getConditions().getDirection() == org.ferrule.model.Direction.OVER_WIRE_TAIL;
        return overWire ? Direction.OVER_WIRE_TAIL : Direction.TIP_FIRST;
    }

    /** A chart without an axis asks about nothing on it. */
    private static Axis axis(Axis axis) {
        return axis == null ? ModelFactory.eINSTANCE.createAxis() : axis;
    }

    private static Optional<Device> wire(FitChart chart, Catalogue catalogue, List<ChartProblem> problems) {
        if (!namesWire(chart)) {
            return Optional.empty();
        }
        try {
            return Optional.of(catalogue.device(chart.getConditions().getWire()).device());
        } catch (ReferenceException e) {
            problems.add(new ChartProblem("wire", e.getMessage()));
            return Optional.empty();
        }
    }

    /** A wire that is named and not found is not known, and must not be taken for the one that a device states. */
    private static Optional<OwnWire> ownWire(FitChart chart, Optional<Device> wire, RuleSet rules) {
        return namesWire(chart) ? Optional.of(wire.map(w -> OwnWire.ofDevice(w, new FigureReader(rules)))
                .orElse(OwnWire.NOT_STATED)) : Optional.empty();
    }

    private static boolean namesWire(FitChart chart) {
        return chart.getConditions() != null && chart.getConditions().getWire() != null;
    }

    private List<MatrixLine> lines(List<AxisEntry> outer) {
        return outer.stream()
                .map(e -> new MatrixLine(devices.read(e.device().device(), Optional.empty()), e.lumen())).toList();
    }

    private List<ReadDevice> columns(List<CataloguedDevice> inner, Optional<OwnWire> wire) {
        return inner.stream().map(d -> devices.read(d.device(), wire)).toList();
    }

    private FitSolver solver(List<BenchResult> bench) {
        if (solver == null || !bench.equals(solverBench)) {
            solver = FitSolver.with(checks, bench);
            solverBench = bench;
        }
        return solver;
    }

    private static List<String> groups(Axis axis, List<CataloguedDevice> devices) {
        AxisOrder order = new AxisOrder(axis(axis));
        return devices.stream().map(order::group).toList();
    }
}
