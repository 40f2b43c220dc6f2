/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.laws;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

import org.ferrule.fit.device.Phase;
import org.ferrule.fit.laws.RandomFigure.Interval;

/**
 * A passage beside others worked out step by step, without the kernel: in every step of the lumen, every part of the
 * device that comes there, with every part of the others that lies all along that step.
 */
final class SharedForce {
    private final RandomShared shared;
    private final RandomPassage passage;
    private final Phase phase;
    private double leastWorst = Double.POSITIVE_INFINITY;
    private double deepestSure = Double.NEGATIVE_INFINITY;
    private double deepestPossible = Double.NEGATIVE_INFINITY;
    private double mostWorst = Double.POSITIVE_INFINITY;
    private boolean bends;

    private SharedForce(RandomShared shared, Phase phase) {
        this.shared = shared;
        this.passage = shared.passage();
        this.phase = phase;
    }

    static SharedForce of(RandomShared shared, Phase phase) {
        SharedForce force = new SharedForce(shared, phase);
        for (RandomSection bore : force.passage.bore()) {
            for (int step = bore.from(); step < bore.to(); step++) {
                force.pass(bore, step);
            }
        }
        return force;
    }

    /** The least worst-case clearance; no more than the true one. In thirds of a nanometre, as all that follows. */
    double leastWorst() {
        return leastWorst;
    }

    /** No less than the least worst-case clearance. */
    double mostWorst() {
        return mostWorst;
    }

    /** How deep the deepest overlap surely is; below zero where nothing surely overlaps. */
    double deepestSure() {
        return deepestSure;
    }

    /** How deep the deepest overlap may be. */
    double deepestPossible() {
        return deepestPossible;
    }

    /** Whether what is needed bends anywhere, so that steps do not tell it exactly. */
    boolean bends() {
        return bends;
    }

    private void pass(RandomSection bore, int step) {
        List<List<Part>> beside = List.of(List.of());
        for (RandomOccupant occupant : shared.occupants()) {
            List<Part> there = partsOf(occupant, step);
            if (!there.isEmpty()) {
                beside = beside.stream().flatMap(b -> there.stream().map(p -> plus(b, p))).toList();
            }
        }
        for (List<Part> others : beside) {
            for (Part moving : parts(passage.shaft(), passage.port(), phase)) {
                meet(bore, step, moving, others);
            }
        }
    }

    private static List<Part> plus(List<Part> some, Part another) {
        List<Part> more = new ArrayList<>(some);
        more.add(another);
        return more;
    }

    /** A part of a section on one side of the port. */
    private record Part(RandomSection section, int from, int to, boolean wire, RandomFigure ownWire, int tipAt,
            Phase outline) {
    }

    private List<Part> parts(List<RandomSection> shaft, int port, Phase outline) {
        return parts(shaft, port, passage.wire(), 0, outline);
    }

    private static List<Part> parts(List<RandomSection> shaft, int port, RandomFigure wire, int tipAt,
            Phase outline) {
        List<Part> parts = new ArrayList<>();
        for (RandomSection section : shaft) {
            int cut = port == RandomPassage.NONE ? section.to()
                    : Math.max(section.from(), Math.min(section.to(), port));
            if (cut > section.from()) {
                parts.add(new Part(section, section.from(), cut, false, wire, tipAt, outline));
            }
            if (cut < section.to()) {
                parts.add(new Part(section, cut, section.to(), true, wire, tipAt, outline));
            }
        }
        return parts;
    }

    private List<Part> partsOf(RandomOccupant occupant, int step) {
        int tipAt = passage.boreLength() + occupant.tipAhead();
        Phase outline = occupant.used() ? Phase.OUT : phase;
        return parts(occupant.shaft(), occupant.port(), occupant.wire(), tipAt, outline).stream()
                .filter(p -> tipAt - p.to() <= step && tipAt - p.from() >= step + 1).toList();
    }

    private void meet(RandomSection bore, int step, Part moving, List<Part> others) {
        for (int x = step; x <= step + 1; x++) {
            for (int s = moving.from(); s <= moving.to() && s + x <= passage.travel(); s++) {
                boolean surely = step + moving.from() < passage.travel();
                compare(bore, x, s, moving, others, surely);
            }
        }
    }

    private void compare(RandomSection bore, int x, int s, Part moving, List<Part> others, boolean surely) {
        Interval lumen = BruteForce.bore(passage.rules(), bore, x);
        List<Interval> discs = new ArrayList<>(discs(moving, s));
        others.forEach(p -> discs.addAll(discs(p, p.tipAt() - x)));
        bends |= discs.size() > 2;
        List<Double> high = values(discs, Interval::high);
        List<Double> deciding = values(discs, d -> d.assumed() ? d.low() : d.centre());
        double most = lumen.assumed() ? lumen.high() : lumen.centre();
        leastWorst = Math.min(leastWorst, lumen.low() - RimPacking.enough(high));
        deepestPossible = Math.max(deepestPossible, RimPacking.enough(deciding) - most);
        if (surely) {
            mostWorst = Math.min(mostWorst, lumen.low() - RimPacking.atLeast(high));
            deepestSure = Math.max(deepestSure, RimPacking.atLeast(deciding) - most);
        }
    }

    private static List<Double> values(List<Interval> discs, ToDoubleFunction<Interval> lane) {
        return IntStream.range(0, discs.size()).mapToObj(i -> lane.applyAsDouble(discs.get(i))).toList();
    }

    private List<Interval> discs(Part part, int s) {
        Interval shaft = BruteForce.outline(passage.rules(), part.section(), s, part.outline());
        return part.wire() ? List.of(shaft, BruteForce.interval(passage.rules(), part.ownWire())) : List.of(shaft);
    }
}
