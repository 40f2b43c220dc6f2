/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.ferrule.escalation.equipment.MoveAnswer;
import org.ferrule.escalation.equipment.Outfitter;
import org.ferrule.escalation.equipment.Stock;
import org.ferrule.escalation.state.CaseFile;
import org.ferrule.escalation.state.SystemState;
import org.ferrule.escalation.technique.Costs;
import org.ferrule.escalation.technique.Ladder;
import org.ferrule.escalation.technique.Move;
import org.ferrule.escalation.technique.Resource;
import org.ferrule.escalation.technique.Technique;
import org.ferrule.order.OrderedPlan;
import org.ferrule.order.Placement;
import org.ferrule.shelf.stock.Pick;
import org.ferrule.shelf.stock.StockException;

/** Walks along an order and takes from the shelf what each step needs, so that later steps see what is left. */
final class Walk {
    private final CaseFile file;
    private final Ladder ladder;
    private final Progress progress;
    private final Delivery delivery;
    private final List<Rung> rungs = new ArrayList<>();
    private final Map<String, MoveAnswer> equipped = new LinkedHashMap<>();
    private Outfitter outfitter;
    private SystemState system;
    private Costs expected;
    private Costs worst;
    private Optional<MoveAnswer> failed = Optional.empty();

    Walk(CaseFile file, Ladder ladder, Progress progress, Outfitter outfitter) {
        this.file = file;
        this.ladder = ladder;
        this.progress = progress;
        this.outfitter = outfitter;
        this.delivery = new Delivery(file, outfitter);
        this.system = progress.system();
        this.expected = file.used();
        this.worst = file.used();
    }

    /** Walks until the end, or until a step lacks what earlier ones took. */
    Walk along(OrderedPlan order) {
        for (Placement placement : order.placements()) {
            if (failed.isEmpty()) {
                step(placement);
            }
        }
        return this;
    }

    /** The steps taken. */
    List<Rung> rungs() {
        return rungs;
    }

    /** The step that could not be taken, if there is one. */
    Optional<MoveAnswer> failed() {
        return failed;
    }

    private void step(Placement placement) {
        String id = placement.step().id();
        Move move = placement.step().isSetup() ? ladder.setup(id) : ladder.technique(id);
        boolean isFirst = !equipped.containsKey(id);
        MoveAnswer answer = equipped.computeIfAbsent(id, key -> outfitter.outfit(move, system));
        if (!answer.isPossible()) {
            failed = Optional.of(answer);
            return;
        }
        List<Pick> taken = isFirst ? Pricing.taken(answer) : List.of();
        Costs costs = costs(move, placement).plus(Pricing.price(taken, outfitter.stock()));
        expected = expected.plus(costs.times(placement.reach()));
        worst = worst.plus(costs);
        system = placement.step().isSetup() ? answer.after() : system;
        rungs.add(new Rung(rungs.size() + 1, move, attempt(move, placement), answer, taken, costs, placement, expected,
                worst, beyond(), delivery.verdict(system)));
        outfitter = outfitter.left(without(outfitter.stock(), taken));
    }

    private int attempt(Move move, Placement placement) {
        return placement.step().isSetup() ? 0 : progress.triesOf(move.id()) + placement.step().attempt();
    }

    private Costs costs(Move move, Placement placement) {
        return move instanceof Technique technique ? technique.tries().get(attempt(move, placement) - 1).costs()
                : ladder.setup(move.id()).costs();
    }

    private Set<Resource> beyond() {
        Set<Resource> beyond = new HashSet<>();
        file.aim().budgets().forEach((resource, budget) -> {
            if (worst.of(resource) > budget) {
                beyond.add(resource);
            }
        });
        return beyond;
    }

    private static Stock without(Stock stock, List<Pick> picks) {
        Stock left = stock;
        for (Pick pick : picks) {
            try {
                left = left.with(left.shelf().take(pick.asUse()));
            } catch (StockException e) {
                throw new IllegalStateException("picked from the shelf what is not there", e);
            }
        }
        return left;
    }
}
