/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.words;

import java.util.List;
import java.util.Optional;

import org.ferrule.chart.words.Phrases;
import org.ferrule.chart.words.Printable;
import org.ferrule.escalation.equipment.Candidate;
import org.ferrule.escalation.equipment.MoveAnswer;
import org.ferrule.escalation.plan.BailOut;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.escalation.plan.Progress;
import org.ferrule.escalation.plan.StopStatus;
import org.ferrule.escalation.plan.WireCheck;
import org.ferrule.escalation.state.Attempt;
import org.ferrule.escalation.state.Outcome;

/** Where a case stands: the wire, what must be at hand, what is to be delivered, when to stop, the log. */
public final class StatusWords {
    private final Phrases phrases;
    private final PlanNames names;
    private final EquipmentWords equipment;
    private final LackWords lacks;

    StatusWords(Phrases phrases, PlanNames names, EquipmentWords equipment, LackWords lacks) {
        this.phrases = phrases;
        this.names = names;
        this.equipment = equipment;
        this.lacks = lacks;
    }

    /** What must be seen before everything. */
    public String wireCheck() {
        return phrases.get("wire");
    }

    /** What the case states of it. */
    public String wireCheck(WireCheck check) {
        return phrases.get("wire." + check);
    }

    /** What is to be at hand, and with what: "coil: Nordal 3 x 10, fits, 0.1 mm left"; or why not. */
    public String bailOut(BailOut bailOut) {
        return phrases.fill("bailOut", names.role(bailOut.role()), single(bailOut.answer()));
    }

    /** Whether the device to be delivered passes the system in place; with the reason when it does not. */
    public String delivery(MoveAnswer.Single answer) {
        Optional<Candidate> nearest = answer.answer().stream().flatMap(a -> a.ranked().stream()).findFirst();
        return phrases.fill("delivery", nearest.filter(c -> c.suitability().isUsable()).map(this::deliverable)
                .orElseGet(() -> lacks.why(answer.lacks())));
    }

    private String deliverable(Candidate device) {
        String passes = phrases.fill("single", equipment.name(device), equipment.fit(device));
        return device.supply().suffices() ? passes : phrases.fill("delivery.notOnShelf", passes);
    }

    /** The boxes to lay ready for it, each with verdict and clearance of the device in it. */
    public List<String> boxes(BailOut bailOut) {
        return bailOut.answer().answer().flatMap(a -> a.chosen()).stream().flatMap(c -> c.supply().picks().stream()
                .map(pick -> phrases.fill("single", equipment.pick(pick), equipment.fit(c)))).toList();
    }

    /** The boxes to lay ready for it. */
    public List<String> picks(BailOut bailOut) {
        return bailOut.answer().answer().flatMap(a -> a.chosen()).stream()
                .flatMap(c -> c.supply().picks().stream().map(equipment::box)).toList();
    }

    /** Device, verdict and clearance of who plays a role; why nobody does where nobody does. */
    public String single(MoveAnswer.Single answer) {
        return answer.answer().filter(a -> a.chosen().isPresent())
                .map(a -> phrases.fill("single", equipment.label(a.chosen().get()), equipment.fit(a.chosen().get())))
                .orElseGet(() -> lacks.why(answer.lacks()));
    }

    /** The same, with the first reason alone where nobody plays the role. */
    public String singleInBrief(MoveAnswer.Single answer) {
        boolean chosen = answer.answer().flatMap(a -> a.chosen()).isPresent();
        return chosen || answer.lacks().isEmpty() ? single(answer) : lacks.whyInBrief(answer.lacks());
    }

    /** A stop rule. */
    public String stop(StopStatus status) {
        return Printable.line(status.rule().words());
    }

    /** How a stop rule stands: reached, reached at the worst by a step, not by this plan, or to be watched. */
    public String standing(StopStatus status) {
        if (status.reached()) {
            return phrases.get("stop.reached");
        }
        if (status.rule().resource().isEmpty()) {
            return phrases.get("stop.watched");
        }
        return status.rung().isPresent() ? phrases.fill("stop.rung", Integer.toString(status.rung().getAsInt()))
                : phrases.get("stop.notReached");
    }

    /** Something wrong in the log; entries count from 1. */
    public String problem(Progress.LogProblem problem) {
        return phrases.fill("log." + problem.kind(), Integer.toString(problem.entry() + 1),
                Printable.line(problem.detail()));
    }

    /** What was done and how it ended, such as "Small balloon - failed"; a set-up that succeeded is in place. */
    public String attempt(Attempt attempt) {
        boolean inPlace = names.isSetup(attempt.move()) && attempt.outcome() == Outcome.CROSSED;
        return phrases.fill("attempt", names.move(attempt.move()),
                inPlace ? phrases.get("attempt.inPlace") : attempt.outcome().word());
    }

    /** Why a plan has no steps: the device is across, the wire is not where it must be, or nothing can be done. */
    public String noSteps(Plan plan) {
        if (plan.progress().crossed()) {
            return phrases.get("noSteps.crossed");
        }
        return phrases.get(plan.wireCheck() == WireCheck.DENIED ? "noSteps.wire" : "noSteps.impossible");
    }

    /** Whether it means something what is not in the plan: not where planning has ended. */
    public boolean isOpen(Plan plan) {
        return !plan.progress().crossed() && plan.wireCheck() != WireCheck.DENIED;
    }
}
