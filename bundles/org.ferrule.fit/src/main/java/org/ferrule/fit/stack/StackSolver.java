/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.stack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.ferrule.fit.FitSolver;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.evidence.Chance;
import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.passage.Stretch;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.quantity.Length;
import org.ferrule.statistics.JointProbability;

/** Asks every level of a stack against the level that holds it. */
public final class StackSolver {
    private StackSolver() {
    }

    /**
     * Answers a stack.
     *
     * @throws IllegalArgumentException naming the values when an extension lies so that its collar has left the lumen
     *         around it, and something is to pass it
     */
    public static StackAnswer answer(Stack stack, FitSolver solver) {
        Layout layout = new Layout(stack);
        List<LevelAnswer> levels = new ArrayList<>();
        for (int i = 0; i < stack.levels().size(); i++) {
            boolean isAsked = i > 0 && !stack.levels().get(i).isValve();
            levels.add(new LevelAnswer(stack.levels().get(i), isAsked ? crossings(stack, layout, i, solver)
                    : List.of()));
        }
        Optional<AccessRatio> access = access(stack);
        List<Reason> reasons = new ArrayList<>();
        access.filter(AccessRatio::mayBeLarger).ifPresent(ratio -> reasons.add(
                Reason.of(ReasonCode.LARGER_THAN_VESSEL, Reason.name(outermost(stack).name()),
                        Reason.diameter(ratio.largestDevice()), Reason.diameter(ratio.smallestVessel()))));
        return new StackAnswer(levels, access, chance(levels), tips(stack, layout), reasons);
    }

    private static List<Crossing> crossings(Stack stack, Layout layout, int level, FitSolver solver) {
        return new Crossings(stack, layout, level).questions().stream()
                .map(question -> new Crossing(question, solver.answer(question))).toList();
    }

    private static Device outermost(Stack stack) {
        return stack.levels().get(0).device().device().device();
    }

    /** The outermost device at its thickest; nothing where a figure is missing. */
    private static Optional<AccessRatio> access(Stack stack) {
        List<Stretch> outline = stack.levels().get(0).device().device().outline(Phase.IN);
        boolean known = stack.access().flatMap(Access::low).filter(l -> l.compareTo(Length.ZERO) > 0).isPresent()
                && !outline.isEmpty() && outline.stream().allMatch(s -> s.diameter().isPresent());
        if (!known) {
            return Optional.empty();
        }
        Figure thickest = outline.stream().map(s -> s.diameter().orElseThrow().largest()).reduce(Figure::max)
                .orElseThrow();
        Access access = stack.access().orElseThrow();
        Length low = access.low().orElseThrow();
        return Optional.of(new AccessRatio(access.vessel(), low, thickest.high(),
                thickest.low().mm() / access.high().orElseThrow().mm(), thickest.high().mm() / low.mm()));
    }

    private static Optional<JointProbability> chance(List<LevelAnswer> levels) {
        List<Chance> chances = levels.stream().flatMap(l -> l.crossings().stream())
                .flatMap(c -> c.answer().in().evidence().stream()).filter(Chance.class::isInstance)
                .map(Chance.class::cast).toList();
        return chances.isEmpty() ? Optional.empty()
                : Optional.of(new JointProbability(
                        JointProbability.bounds(chances.stream().map(Chance::low).toList()).low(),
                        JointProbability.bounds(chances.stream().map(Chance::high).toList()).high()));
    }

    private static List<Tip> tips(Stack stack, Layout layout) {
        Optional<Length> length = outermost(stack).statedLength();
        List<Tip> tips = new ArrayList<>();
        for (int i = 0; length.isPresent() && i < stack.levels().size(); i++) {
            Level level = stack.levels().get(i);
            if (!level.isValve()) {
                for (Placed device : level.beside()) {
                    tips.add(tip(device, length.get().plus(layout.tipOf(device, i))));
                }
                tips.add(tip(level.device(), length.get().plus(layout.tip(i))));
            }
        }
        return tips;
    }

    private static Tip tip(Placed placed, Length fromHub) {
        Device device = placed.device().device();
        return new Tip(device.id(), fromHub, device.statedLength().map(l -> l.minus(fromHub)));
    }
}
