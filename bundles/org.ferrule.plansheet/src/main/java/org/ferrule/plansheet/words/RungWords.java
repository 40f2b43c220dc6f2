/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.chart.words.Phrases;
import org.ferrule.chart.words.Printable;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.escalation.plan.Rung;
import org.ferrule.escalation.state.SystemState;
import org.ferrule.escalation.technique.Chance;
import org.ferrule.escalation.technique.Hazard;
import org.ferrule.escalation.technique.PlannedTry;
import org.ferrule.escalation.technique.Technique;

/** A step of a plan: what it is, why it stands where it stands, what it changes. */
public final class RungWords {
    /** Below this, a chance as ordered is that of its try, up to the last digits of a double. */
    private static final double SAME = 1e-9;

    private final Phrases phrases;
    private final PlanNames names;
    private final Amounts amounts;

    RungWords(Phrases phrases, PlanNames names, Amounts amounts) {
        this.phrases = phrases;
        this.names = names;
        this.amounts = amounts;
    }

    /** Its number and its name, such as "4. Small balloon, try 2 of 3". */
    public String heading(Rung rung) {
        return phrases.fill("rung.heading", Integer.toString(rung.number()), title(rung));
    }

    /** Its name, and of a technique that may be tried several times which try it is. */
    public String title(Rung rung) {
        String name = names.move(rung.move().id());
        return tries(rung) > 1 ? phrases.fill("rung.try", name, Integer.toString(rung.attempt()),
                Integer.toString(tries(rung))) : name;
    }

    private static int tries(Rung rung) {
        return rung.move() instanceof Technique technique ? technique.tries().size() : 0;
    }

    /** What it does: bring something in, or what it does about the lesion. */
    public String kind(Rung rung) {
        return rung.move() instanceof Technique technique ? technique.axis().word() : phrases.get("rung.setup");
    }

    /** Why it stands here: cost per chance, of itself or of the block that was placed together; after lower hazards. */
    public String why(Rung rung, Plan plan) {
        boolean tiers = plan.file().aim().tiersFirst() && !marks(rung).isEmpty();
        return tiers ? phrases.fill("rung.why.tier", byIndex(rung, plan)) : byIndex(rung, plan);
    }

    private String byIndex(Rung rung, Plan plan) {
        List<Rung> block = blockOf(rung, plan);
        if (block.size() > 1) {
            return phrases.fill("rung.why.block", index(rung, plan), numbers(block));
        }
        return rung.isSetup() ? phrases.get("rung.why.setup") : phrases.fill("rung.why", index(rung, plan));
    }

    /** The index that decided its place, such as "12 min per chance"; without one where it has none. */
    public String index(Rung rung, Plan plan) {
        double index = rung.placement().index();
        return Double.isInfinite(index) ? phrases.get("rung.noIndex")
                : phrases.fill("rung.index", amounts.compared(plan.file().aim().objective(), index));
    }

    /** The number of the index alone, in the unit of what is spared; empty where it has none. */
    public String indexNumber(Rung rung) {
        double index = rung.placement().index();
        return Double.isInfinite(index) ? "" : Amounts.compared(index);
    }

    /** The steps with which it was placed together, such as "5-7"; empty where it was placed alone. */
    public String block(Rung rung, Plan plan) {
        List<Rung> block = blockOf(rung, plan);
        return block.size() > 1 ? numbers(block) : "";
    }

    private static List<Rung> blockOf(Rung rung, Plan plan) {
        return plan.rungs().stream().filter(other -> other.placement().block() == rung.placement().block()).toList();
    }

    private static String numbers(List<Rung> block) {
        int first = block.get(0).number();
        int last = block.get(block.size() - 1).number();
        return first + "\u2013" + last;
    }

    /** The chance that is assumed of a try, and on what it rests; empty for a set-up. */
    public String chance(Rung rung) {
        Optional<PlannedTry> attempt = attempt(rung);
        if (attempt.isEmpty()) {
            return "";
        }
        Chance chance = attempt.get().chance();
        double ordered = rung.placement().step().chance();
        String basis = basis(chance);
        return Math.abs(ordered - chance.mean()) < SAME
                ? phrases.fill("chance", Amounts.share(chance.mean()), basis)
                : phrases.fill("chance.discounted", Amounts.share(chance.mean()), basis, Amounts.share(ordered));
    }

    /** The same without whose the prior is. */
    public String chanceInBrief(Rung rung) {
        Optional<PlannedTry> attempt = attempt(rung);
        if (attempt.isEmpty()) {
            return "";
        }
        Chance chance = attempt.get().chance();
        String prior = phrases.fill("chance.brief", Amounts.share(rung.placement().step().chance()),
                Amounts.share(chance.prior().successes()), Amounts.share(chance.prior().failures()));
        return chance.isCounted() ? phrases.fill("chance.brief.counted", prior,
                Integer.toString(chance.successes()), Integer.toString(chance.successes() + chance.failures()))
                : prior;
    }

    private static Optional<PlannedTry> attempt(Rung rung) {
        return rung.move() instanceof Technique technique ? Optional.of(technique.tries().get(rung.attempt() - 1))
                : Optional.empty();
    }

    /** On what a chance rests: its prior, with whose it is, and the laboratory's own counts. */
    public String basis(Chance chance) {
        String prior = phrases.fill("chance.prior", Amounts.share(chance.prior().successes()),
                Amounts.share(chance.prior().failures()), Printable.line(chance.prior().label()));
        return chance.isCounted() ? phrases.fill("chance.counted", prior, Integer.toString(chance.successes()),
                Integer.toString(chance.successes() + chance.failures())) : phrases.fill("chance.notCounted", prior);
    }

    /** What is drawn back for the step, and what a set-up leaves in the system, one line each. */
    public List<String> changes(Rung rung) {
        SystemState before = rung.equipment().before();
        Stream<String> back = rung.equipment().drawnBack().stream().sorted()
                .map(slot -> phrases.fill("change.back", phrases.get("slot." + slot),
                        names.device(SystemChange.device(before, slot).orElse(""))));
        Stream<String> left = SystemChange.between(before, rung.equipment().after()).stream()
                .filter(change -> rung.isSetup()).map(this::change);
        return Stream.concat(back, left).toList();
    }

    /** One change of the system. */
    public String change(SystemChange change) {
        String slot = phrases.get("slot." + change.slot());
        if (change.is().isEmpty()) {
            return phrases.fill("change.out", slot, names.device(change.was().orElse("")));
        }
        String now = names.device(change.is().get());
        return change.was().map(was -> phrases.fill("change.instead", slot, now, names.device(was)))
                .orElseGet(() -> phrases.fill("change.in", slot, now));
    }

    /** Marks that must not be overlooked: hazard beyond the usual, use outside the label with its reason. */
    public List<String> marks(Rung rung) {
        List<String> marks = new ArrayList<>();
        if (rung.move().hazard() != Hazard.USUAL) {
            marks.add(phrases.get("hazard." + rung.move().hazard()));
        }
        rung.move().advice().offLabel()
                .ifPresent(reason -> marks.add(phrases.fill("offLabel", Printable.line(reason))));
        return List.copyOf(marks);
    }

    /** Whether the device to be delivered passes when this step is done; empty where nobody asked. */
    public String delivery(Rung rung) {
        return rung.delivery().map(verdict -> phrases.fill("rung.delivery", phrases.get("delivery." + verdict)))
                .orElse("");
    }
}
