/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.quick;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.ferrule.fit.FitSolver;
import org.ferrule.fit.check.EdgeCheck;
import org.ferrule.fit.check.FitCheck;
import org.ferrule.fit.check.LengthCheck;
import org.ferrule.fit.check.PassageCheck;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.passage.Conditions;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.passage.Terms;

/**
 * Answers many questions under the same terms in plain numbers: verdicts, authorities, marks and the place that decides,
 * without reasons. It says of each device, and of each pair, whether it can answer it; whatever it answers is what the
 * solver answers. Immutable and safe to use from many threads.
 */
public final class QuickSolver {
    private static final int KINDS = DeviceKind.values().length;
    private static final int MOST_REQUIRED = 1 << 30;

    private final Terms terms;
    private final List<FitCheck> others;
    private final Map<String, Set<String>> tried = new HashMap<>();
    private final int[] required = new int[KINDS * KINDS];
    final boolean tipFirst;
    final boolean reachStated;
    final boolean checksLength;
    final boolean checksEdges;

    private QuickSolver(Terms terms, FitSolver solver) {
        this.terms = terms;
        this.tipFirst = terms.direction() == Direction.TIP_FIRST;
        this.reachStated = terms.reach().isPresent();
        this.checksLength = has(solver, LengthCheck.class);
        this.checksEdges = has(solver, EdgeCheck.class);
        this.others = solver.checks().stream().filter(check -> !isKnown(check)).toList();
        solver.bench().forEach(r -> tried.computeIfAbsent(r.outer(), outer -> new HashSet<>()).add(r.inner()));
        for (DeviceKind outer : DeviceKind.values()) {
            for (DeviceKind inner : DeviceKind.values()) {
                required[outer.ordinal() * KINDS + inner.ordinal()] = terms.rules().findClearance(outer, inner)
                        .map(rule -> (int) Math.min(MOST_REQUIRED, rule.required().thirdNanometres()))
                        .orElse(Passing.NOT_RULED);
            }
        }
    }

    private static boolean has(FitSolver solver, Class<? extends FitCheck> type) {
        return solver.checks().stream().anyMatch(type::isInstance);
    }

    private static boolean isKnown(FitCheck check) {
        return check instanceof PassageCheck || check instanceof LengthCheck || check instanceof EdgeCheck;
    }

    /**
     * A quick way to the answers of a solver; nothing where there is none: under conditions beyond a device that passes
     * alone, or without the geometry of the passage.
     *
     * @param solver the solver for cells under these terms
     */
    public static Optional<QuickSolver> of(Terms terms, FitSolver solver) {
        boolean canAsk = terms.direction() == Direction.TIP_FIRST || terms.reach().isPresent()
                || terms.rules().wireAhead().isPresent();
        boolean covers = terms.conditions().equals(Conditions.NONE) && canAsk && has(solver, PassageCheck.class)
                && terms.reach().filter(reach -> !FlatStretches.isNear(reach)).isEmpty();
        return covers ? Optional.of(new QuickSolver(terms, solver)) : Optional.empty();
    }

    /** Makes a lumen ready; nothing when pairs with it cannot be answered quickly. */
    public Optional<QuickOuter> outer(ReadDevice device, Lumen lumen) {
        return QuickOuter.of(device, lumen, terms, tried.getOrDefault(device.device().id(), Set.of()));
    }

    /** Makes an inner device ready; nothing when pairs with it cannot be answered quickly. */
    public Optional<QuickInner> inner(ReadDevice device) {
        boolean concernsOthers = others.stream().anyMatch(check -> check.concerns(terms, device));
        return concernsOthers ? Optional.empty() : QuickInner.of(device, terms);
    }

    /** A scratch pad for one thread. */
    public QuickAnswer pad() {
        return new QuickAnswer(this);
    }

    int required(QuickOuter outer, QuickInner inner) {
        return required[outer.kind * KINDS + inner.kind];
    }
}
