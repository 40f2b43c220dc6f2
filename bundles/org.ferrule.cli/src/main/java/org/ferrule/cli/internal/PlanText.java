/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.chart.words.Phrases;
import org.ferrule.engine.limits.CaseLimit;
import org.ferrule.escalation.equipment.RoleAnswer;
import org.ferrule.escalation.plan.BailOut;
import org.ferrule.escalation.plan.LeftOut;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.escalation.plan.Rung;
import org.ferrule.plansheet.why.OrderReasons;
import org.ferrule.plansheet.words.BailOutMark;
import org.ferrule.plansheet.words.Budget;
import org.ferrule.plansheet.words.PlanWords;

/** Prints plans for people. */
public final class PlanText {
    private final Plan plan;
    private final PlanWords words;
    private final List<CaseLimit> limits;
    private final Optional<OrderReasons> reasons;
    private final boolean whole;
    private final Phrases phrases;
    private final PrintWriter out;

    /**
     * Prints a plan.
     *
     * @param limits from what the case states
     * @param reasons what its order hangs on; absent where nobody asked
     * @param whole whether all is told of why something cannot be done, and not one line
     */
    public PlanText(Plan plan, PlanWords words, List<CaseLimit> limits, Optional<OrderReasons> reasons, boolean whole,
            PrintWriter out) {
        this.whole = whole;
        this.plan = plan;
        this.words = words;
        this.limits = List.copyOf(limits);
        this.reasons = reasons;
        this.phrases = words.phrases();
        this.out = out;
    }

    /** Prints all of it, what comes first first. */
    public void print() {
        out.println(plan.file().title() + ", " + plan.file().day());
        out.println(phrases.fill("sheet.ladder", plan.ladder().title()) + ", rev. " + plan.ladder().revision());
        out.println();
        out.println(phrases.fill("sheet.first", words.status().wireCheck()) + " \u2013 "
                + words.status().wireCheck(plan.wireCheck()));
        list("sheet.looks", plan.looks().stream().map(look -> words.names().move(look.id())));
        printSituation();
        list("sheet.bailOut", plan.bailOut().stream().flatMap(this::bailOut));
        printSteps();
        list("sheet.budgets", Budget.of(plan).stream().map(this::budget));
        list("sheet.limits", limits.stream().map(CaseLimit::line));
        list("sheet.stop", plan.stops().stream()
                .map(stop -> words.status().stop(stop) + " \u2013 " + words.status().standing(stop)));
        list("sheet.exits", plan.exits().stream().map(exit -> words.names().move(exit.id())));
        if (words.status().isOpen(plan)) {
            list("sheet.leftOut", plan.leftOut().stream().flatMap(this::leftOut));
            list("sheet.assumptions", words.assumptions().all(plan).stream());
            reasons.ifPresent(why -> list("sheet.why", words.why().order(why, plan).stream()));
        }
        out.println();
        out.println(phrases.get("sheet.caution"));
    }

    private void printSituation() {
        out.println();
        out.println(phrases.fill("sheet.system", String.join(", ",
                plan.progress().system().devices().stream().map(words.names()::device).toList())));
        plan.delivery().ifPresent(answer -> out.println(words.status().delivery(answer)));
        plan.file().log().forEach(attempt -> out
                .println(phrases.fill("sheet.tried", words.status().attempt(attempt))));
        plan.progress().problems().forEach(problem -> out.println(words.status().problem(problem)));
    }

    private void printSteps() {
        out.println();
        if (plan.rungs().isEmpty()) {
            out.println(words.status().noSteps(plan));
        } else {
            out.println(phrases.get("sheet.steps"));
        }
        plan.rungs().forEach(this::print);
    }

    private void print(Rung rung) {
        out.println(words.rungs().heading(rung));
        say(words.rungs().marks(rung).stream());
        say(Stream.of(words.rungs().kind(rung), words.rungs().why(rung, plan), words.rungs().chance(rung)));
        reasons.ifPresent(why -> say(Stream.of(words.why().step(rung, why, plan))));
        boolean first = plan.rungs().stream().limit(rung.number() - 1L)
                .noneMatch(earlier -> earlier.move().id().equals(rung.move().id()));
        if (first) {
            say(rung.equipment().roles().stream().flatMap(this::role));
            say(Stream.concat(words.rungs().changes(rung).stream(), rung.move().advice().changes().stream()));
            say(rung.move().advice().cautions().stream().map(caution -> phrases.fill("sheet.caution.one", caution)));
            say(Stream.of(rung.move().advice().stop()).filter(stop -> !stop.isBlank())
                    .map(stop -> phrases.fill("sheet.giveUp", stop)));
            say(Stream.of(words.rungs().delivery(rung)).filter(words -> rung.isSetup()));
        }
        say(Stream.of(phrases.fill("sheet.sums", words.budgets().amounts().all(rung.worst()))));
        say(rung.beyond().stream().sorted().map(r -> phrases.fill("sheet.beyond", words.budgets().name(r))));
    }

    private Stream<String> role(RoleAnswer role) {
        String fit = role.chosen().map(words.equipment()::fit).orElse("");
        Stream<String> chosen = Stream.of(
                words.equipment().chosen(role) + " \u2013 " + fit + "; " + words.equipment().why(role));
        Stream<String> picks = role.chosen().stream().flatMap(c -> c.supply().picks().stream())
                .map(pick -> phrases.fill("sheet.take", words.equipment().pick(pick)));
        Stream<String> cautions = role.chosen().stream().flatMap(c -> words.fits().cautions(c.suitability()).stream())
                .map(caution -> phrases.fill("sheet.caution.one", caution));
        return Stream.of(chosen, picks, cautions).flatMap(lines -> lines);
    }

    private Stream<String> bailOut(BailOut bailOut) {
        String mark = phrases.fill("sheet.marked", words.names().role(bailOut.role()), BailOutMark.of(bailOut).word());
        return Stream.concat(Stream.of(mark + " \u2013 "
                + (whole ? words.status().single(bailOut.answer()) : words.status().singleInBrief(bailOut.answer()))),
                words.status().picks(bailOut).stream().map(pick -> "  " + phrases.fill("sheet.take", pick)));
    }

    private Stream<String> leftOut(LeftOut leftOut) {
        return Stream.concat(Stream.of(words.leftOut().name(leftOut) + " \u2013 "
                + (whole ? words.leftOut().why(leftOut) : words.leftOut().brief(leftOut))),
                words.leftOut().remedies(leftOut).stream().map(r -> "  " + phrases.fill("sheet.remedy", r)));
    }

    private String budget(Budget budget) {
        String beyond = words.budgets().beyond(budget);
        String sums = phrases.fill("sheet.budget", words.budgets().name(budget.resource()),
                words.budgets().sums(budget));
        return beyond.isEmpty() ? sums : sums + " \u2013 " + beyond;
    }

    private void say(Stream<String> lines) {
        lines.filter(line -> !line.isBlank()).forEach(line -> out.println("   " + line));
    }

    private void list(String heading, Stream<String> lines) {
        List<String> all = lines.toList();
        if (!all.isEmpty()) {
            out.println();
            out.println(phrases.get(heading));
            all.forEach(line -> out.println("   " + line));
        }
    }
}
