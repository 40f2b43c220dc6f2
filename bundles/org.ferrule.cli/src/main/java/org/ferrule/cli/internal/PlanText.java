/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.io.PrintWriter;
import java.util.List;

import org.ferrule.escalation.plan.BailOut;
import org.ferrule.escalation.plan.LeftOut;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.escalation.plan.Rung;
import org.ferrule.escalation.technique.Technique;
import org.ferrule.plansheet.words.Budget;
import org.ferrule.plansheet.words.PlanWords;

/** A plan as lines of text. */
public final class PlanText {
    private final PlanWords words;
    private final PrintWriter out;

    public PlanText(PlanWords words, PrintWriter out) {
        this.words = words;
        this.out = out;
    }

    /** Writes it. */
    public void print(Plan plan) {
        out.println(plan.file().title() + ", " + plan.file().day() + " (" + plan.ladder().title() + ")");
        out.println();
        out.println(words.status().wireCheck(plan.wireCheck()));
        section("Look first", plan.looks().stream().map(Technique::name).toList());
        plan.progress().problems().forEach(p -> out.println("Log: " + words.status().problem(p)));
        plan.rungs().forEach(rung -> print(rung, plan));
        if (plan.progress().crossed()) {
            out.println();
            out.println("The device is across: nothing is planned any more.");
        } else if (!plan.canGoOn()) {
            out.println();
            out.println("Nothing on the ladder can be done.");
        }
        section("Budgets", Budget.of(plan).stream().map(this::budget).toList());
        section("Left out", plan.leftOut().stream().map(this::leftOut).toList());
        section("At hand when something goes wrong", plan.bailOut().stream().map(this::bailOut).toList());
        plan.delivery().ifPresent(d -> section("To be delivered", List.of(words.status().delivery(d))));
        section("Stop", plan.stops().stream().map(words.status()::stop).toList());
        section("Ends of the ladder", plan.exits().stream().map(Technique::name).toList());
        section("Assumed", words.assumptions().all(plan));
        out.println();
        out.println("Not a medical device and no advice. The instructions for use and the operator decide.");
    }

    private void section(String title, List<String> lines) {
        if (!lines.isEmpty()) {
            out.println();
            out.println(title + ":");
            lines.forEach(line -> out.println("  " + line));
        }
    }

    private void print(Rung rung, Plan plan) {
        out.println();
        out.println(words.rungs().heading(rung) + " (" + words.rungs().kind(rung) + ")");
        words.rungs().marks(rung).forEach(mark -> line("! " + mark));
        line(words.rungs().why(rung, plan));
        line(words.rungs().chance(rung));
        rung.equipment().roles().forEach(role -> {
            line(words.equipment().chosen(role));
            role.chosen().ifPresent(chosen -> line("  " + words.equipment().fit(chosen)));
            line("  " + words.equipment().why(role));
        });
        rung.taken().forEach(pick -> line("take " + words.equipment().pick(pick)));
        words.rungs().changes(rung).forEach(this::line);
        rung.move().advice().cautions().forEach(caution -> line("caution: " + caution));
        line(rung.move().advice().stop());
        line(words.rungs().delivery(rung));
    }

    private void line(String text) {
        if (!text.isBlank()) {
            out.println("   " + text);
        }
    }

    private String budget(Budget budget) {
        String beyond = words.budgets().beyond(budget);
        return words.budgets().sums(budget) + (beyond.isBlank() ? "" : " - " + beyond);
    }

    private String leftOut(LeftOut leftOut) {
        StringBuilder text = new StringBuilder(words.leftOut().name(leftOut)).append(": ")
                .append(words.leftOut().why(leftOut));
        words.lacks().say(leftOut.lacks()).forEach(lack -> text.append("; ").append(lack));
        words.leftOut().remedies(leftOut).forEach(remedy -> text.append(" -> ").append(remedy));
        return text.toString();
    }

    private String bailOut(BailOut bailOut) {
        List<String> picks = words.status().picks(bailOut);
        return words.status().bailOut(bailOut) + (picks.isEmpty() ? "" : ": " + String.join(", ", picks));
    }
}
