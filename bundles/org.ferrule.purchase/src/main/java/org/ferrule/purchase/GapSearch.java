/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.purchase;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.ferrule.purchase.IntegerProgramme.Outcome;
import org.ferrule.purchase.IntegerProgramme.State;
import org.ferrule.purchase.PurchaseModel.Axis;
import org.ferrule.purchase.Uncoverable.Gap;
import org.ferrule.shelf.ready.Need;

/** Finds out what no purchase can cover: axes by themselves, and then axes that take each other's units. */
final class GapSearch {
    private final PurchaseProblem problem;
    private final Duration limit;

    private GapSearch(PurchaseProblem problem, Duration limit) {
        this.problem = problem;
        this.limit = limit;
    }

    static PurchaseAnswer of(PurchaseProblem problem, Duration limit) {
        return new GapSearch(problem, limit).answer();
    }

    private PurchaseAnswer answer() {
        List<Axis> axes = PurchaseModel.axes(problem);
        Optional<Map<Axis, Long>> together = lacking(axes);
        List<Gap> gaps = new ArrayList<>();
        for (Axis axis : axes) {
            Optional<Long> alone = lacking(List.of(axis)).map(lacking -> lacking.get(axis));
            if (alone.isEmpty() || together.isEmpty()) {
                return new Undecided();
            }
            if (alone.get() > 0) {
                gaps.add(gap(axis, alone.get(), true));
            }
            if (together.get().get(axis) > alone.get()) {
                gaps.add(gap(axis, together.get().get(axis), false));
            }
        }
        return gaps.isEmpty() ? new Undecided() : new Uncoverable(gaps);
    }

    /** The fewest rungs that some axes lack, if that is confirmed. */
    private Optional<Map<Axis, Long>> lacking(List<Axis> axes) {
        PurchaseModel model = PurchaseModel.ofGaps(problem, axes, limit);
        Outcome outcome = model.programme().minimise();
        return outcome.state() == State.CONFIRMED ? Optional.of(model.lacking(outcome.values())) : Optional.empty();
    }

    private Gap gap(Axis axis, long lacking, boolean alone) {
        int wanted = problem.rungsOf(axis.name());
        List<String> needs = axis.planned().rungsOf(axis.name()).stream().flatMap(rung -> rung.needs().stream()
                .filter(need -> isBeyondAll(need, axis.planned())).map(need -> rung.id() + "/" + need.id())).toList();
        return new Gap(axis.planned().id(), axis.name(), wanted, Math.toIntExact(wanted - lacking), alone, needs);
    }

    private boolean isBeyondAll(Need need, PurchaseCase planned) {
        boolean offered = need.items().stream().flatMap(id -> problem.offerOf(id).stream())
                .anyMatch(offer -> offer.isUsableOn(planned.date()));
        int there = need.items().stream().flatMap(id -> problem.shelf().item(id).stream())
                .mapToInt(item -> item.usableOn(planned.date())).sum();
        return !offered && there < need.count();
    }
}
