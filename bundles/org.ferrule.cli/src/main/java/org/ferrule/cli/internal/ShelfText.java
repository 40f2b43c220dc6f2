/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.io.PrintWriter;
import java.util.List;

import org.ferrule.escalation.plan.BailOut;
import org.ferrule.plansheet.ready.ReadyWords;
import org.ferrule.plansheet.words.BailOutMark;
import org.ferrule.shelf.ready.CaseAnswer;
import org.ferrule.shelf.stock.BelowPar;
import org.ferrule.shelf.stock.Item;

/** Prints a shelf for people. */
public final class ShelfText {
    private final ShelfRun run;
    private final PrintWriter out;
    private final ReadyWords words = new ReadyWords();

    public ShelfText(ShelfRun run, PrintWriter out) {
        this.run = run;
        this.out = out;
    }

    /** Stock, what is below par, what has expired, and the cases. */
    public void print() {
        out.println("On " + run.day() + ":");
        run.shelf().items().forEach(this::print);
        list("Below par", run.belowPar().stream().map(this::belowPar).toList());
        list("Expired", run.expired().stream().map(e -> named(e.item()) + ", lot " + e.lot().lot() + ": "
                + e.lot().quantity() + " of use by " + e.lot().expiry().orElseThrow()).toList());
        run.cases().cases().forEach(this::print);
        list("Wanted more than once", run.cases().contentions().stream().map(words::say).toList());
    }

    private void print(Item item) {
        int usable = item.usableOn(run.day());
        String others = item.quantity() > usable ? ", " + (item.quantity() - usable) + " expired" : "";
        out.println("   " + named(item) + ": " + usable + " usable" + others + ", par " + item.parLevel());
    }

    private static String named(Item item) {
        return item.name().equals(item.id()) ? item.id() : item.name() + " (" + item.id() + ")";
    }

    private String belowPar(BelowPar below) {
        return named(below.item()) + ": " + below.usable() + " of " + below.item().parLevel() + ", " + below.missing()
                + " missing";
    }

    private void print(CaseAnswer answer) {
        String id = answer.plannedCase().id();
        out.println();
        out.println(id + ", " + answer.plannedCase().date() + ": " + words.say(answer.readiness()));
        answer.needs().forEach(need -> out.println("   " + words.say(need)));
        run.plan(id).bailOut().forEach(bailOut -> out.println("   at hand: " + named(bailOut) + " \u2013 "
                + BailOutMark.of(bailOut).word()));
    }

    private static String named(BailOut bailOut) {
        return bailOut.role().name().isBlank() ? bailOut.role().id() : bailOut.role().name();
    }

    private void list(String heading, List<String> lines) {
        if (!lines.isEmpty()) {
            out.println();
            out.println(heading + ":");
            lines.forEach(line -> out.println("   " + line));
        }
    }
}
