/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.laws;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

import org.ferrule.fit.device.Phase;
import org.ferrule.fit.laws.RandomFigure.Interval;

/** How much room everything that meets in a passage beside others leaves, worked out without the kernel. */
final class SharedForce {
    private double leastWorst = Double.POSITIVE_INFINITY;
    private double deepestSure = Double.NEGATIVE_INFINITY;
    private double deepestPossible = Double.NEGATIVE_INFINITY;
    private double mostWorst = Double.POSITIVE_INFINITY;
    private boolean bends;
    /** The same discs lie side by side at many stations. */
    private final Map<List<Double>, Double> enough = new HashMap<>();
    private final Map<List<Double>, Double> atLeast = new HashMap<>();

    private SharedForce() {
    }

    static SharedForce of(RandomShared shared, Phase phase) {
        SharedForce force = new SharedForce();
        SharedMeetings.visit(shared, phase, force::compare);
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

    private void compare(Interval lumen, List<Interval> discs, boolean surely) {
        bends |= discs.size() > 2;
        List<Double> high = values(discs, Interval::high);
        List<Double> deciding = values(discs, d -> d.assumed() ? d.low() : d.centre());
        double most = lumen.assumed() ? lumen.high() : lumen.centre();
        if (lumen.low() - inLine(high) > mostWorst && inLine(deciding) - most < deepestSure) {
            return;
        }
        leastWorst = Math.min(leastWorst, lumen.low() - enough(high));
        deepestPossible = Math.max(deepestPossible, enough(deciding) - most);
        if (surely) {
            mostWorst = Math.min(mostWorst, lumen.low() - atLeast(high));
            deepestSure = Math.max(deepestSure, atLeast(deciding) - most);
        }
    }

    private double enough(List<Double> discs) {
        return enough.computeIfAbsent(discs, RimPacking::enough);
    }

    private double atLeast(List<Double> discs) {
        return discs.size() <= 3 ? enough(discs) : atLeast.computeIfAbsent(discs, RimPacking::atLeast);
    }

    /** More than that is never needed. */
    private static double inLine(List<Double> discs) {
        return discs.stream().mapToDouble(d -> d).sum();
    }

    private static List<Double> values(List<Interval> discs, ToDoubleFunction<Interval> lane) {
        return IntStream.range(0, discs.size()).mapToObj(i -> lane.applyAsDouble(discs.get(i))).toList();
    }
}
