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
import java.util.OptionalInt;
import java.util.Set;

import org.ferrule.escalation.equipment.Instruments;
import org.ferrule.escalation.equipment.MoveAnswer;
import org.ferrule.escalation.equipment.Outfitter;
import org.ferrule.escalation.equipment.Stock;
import org.ferrule.escalation.state.CaseFile;
import org.ferrule.escalation.technique.Axis;
import org.ferrule.escalation.technique.Ladder;
import org.ferrule.escalation.technique.StopRule;
import org.ferrule.escalation.technique.Technique;
import org.ferrule.order.OrderProblem;
import org.ferrule.order.OrderedPlan;
import org.ferrule.order.Orders;

/**
 * Plans a case: what can be done with what is on the shelf, in which order, and when to stop. Where earlier steps take
 * the last unit that a later one needs, the later one is left out and the rest is ordered anew; whether it would have
 * been better to keep the unit for it is not searched.
 */
public final class Planner {
    private final Instruments instruments;
    private final Ladder ladder;

    /** Plans with these devices and these techniques. */
    public Planner(Instruments instruments, Ladder ladder) {
        this.instruments = instruments;
        this.ladder = ladder;
    }

    /** The plan of a case as it stands after its log, with that stock before it. */
    public Plan plan(CaseFile file, Stock stock) {
        Progress progress = Progress.of(file, ladder, stock, instruments);
        WireCheck wireCheck = wireCheck(file);
        Outfitter outfitter = Outfitter.of(instruments, ladder, file, progress.stock());
        Survey survey = new Survey(ladder, progress, outfitter);
        ProblemMaker maker = new ProblemMaker(ladder, file.aim(), file.used(), progress);
        Map<String, MoveAnswer> excluded = new LinkedHashMap<>();
        boolean isOver = wireCheck == WireCheck.DENIED || progress.crossed();
        while (true) {
            OrderProblem problem = maker.of(survey, isOver ? allIds() : excluded.keySet());
            OrderedPlan order = Orders.solve(problem);
            Walk walk = new Walk(file, ladder, progress, outfitter).along(order);
            if (walk.failed().isEmpty()) {
                return assemble(file, progress, wireCheck, survey, maker, excluded, problem, order, walk.rungs(),
                        outfitter);
            }
            MoveAnswer failed = walk.failed().get();
            excluded.put(failed.move().id(), failed);
        }
    }

    private Plan assemble(CaseFile file, Progress progress, WireCheck wireCheck, Survey survey, ProblemMaker maker,
            Map<String, MoveAnswer> excluded, OrderProblem problem, OrderedPlan order, List<Rung> rungs,
            Outfitter outfitter) {
        List<LeftOut> leftOut = new Leftovers(ladder, progress, wireCheck, survey, maker,
                new RemedySearch(instruments, outfitter)).of(rungs, excluded, problem);
        return new Plan(file, ladder, progress, wireCheck, offered(Axis.DIAGNOSE, progress), rungs, leftOut,
                offered(Axis.LEAVE, progress), bailOut(progress, outfitter),
                new Delivery(file, outfitter).answer(progress.system()), stops(file, rungs), problem, order);
    }

    private static WireCheck wireCheck(CaseFile file) {
        Boolean stated = file.facts().get(WireCheck.FACT);
        if (stated == null) {
            return WireCheck.TO_BE_SEEN;
        }
        return stated ? WireCheck.STATED : WireCheck.DENIED;
    }

    private Set<String> allIds() {
        Set<String> ids = new HashSet<>();
        ladder.techniques().forEach(t -> ids.add(t.id()));
        ladder.setups().forEach(s -> ids.add(s.id()));
        return ids;
    }

    /** Techniques of that axis that are not tried, but looked at or ended with; none once the device is across. */
    private List<Technique> offered(Axis axis, Progress progress) {
        if (progress.crossed()) {
            return List.of();
        }
        return ladder.techniques().stream().filter(t -> t.axis() == axis && t.tries().isEmpty()).toList();
    }

    private List<BailOut> bailOut(Progress progress, Outfitter outfitter) {
        return ladder.bailOut().stream().map(r -> new BailOut(r, outfitter.role(r, progress.system()))).toList();
    }

    private List<StopStatus> stops(CaseFile file, List<Rung> rungs) {
        List<StopStatus> stops = new ArrayList<>();
        for (StopRule rule : ladder.stopRules()) {
            boolean reached = rule.resource().isPresent()
                    && file.used().of(rule.resource().get()) >= rule.limit().getAsDouble();
            stops.add(new StopStatus(rule, reached, rule.resource().isEmpty() ? OptionalInt.empty()
                    : rungs.stream().filter(r -> r.worst().of(rule.resource().get()) >= rule.limit().getAsDouble())
                            .mapToInt(Rung::number).findFirst()));
        }
        return stops;
    }
}
