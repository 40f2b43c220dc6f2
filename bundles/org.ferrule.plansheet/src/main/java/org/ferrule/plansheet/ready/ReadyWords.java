/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.ready;

import java.util.List;

import org.ferrule.chart.words.Phrases;
import org.ferrule.chart.words.Printable;
import org.ferrule.plansheet.words.PlanWords;
import org.ferrule.shelf.ready.Contention;
import org.ferrule.shelf.ready.NeedAnswer;
import org.ferrule.shelf.ready.Readiness;
import org.ferrule.shelf.ready.Reason;

/** How ready a shelf is, in words. */
public final class ReadyWords {
    private final Phrases phrases = Phrases.beside(PlanWords.class, "plan");

    /** A degree of readiness. */
    public String say(Readiness readiness) {
        return phrases.get("ready." + readiness);
    }

    /** A need with how ready it is and why, such as "Small balloon: balloon - ready". */
    public String say(NeedAnswer answer) {
        String why = String.join("; ", answer.reasons().stream().map(this::say).toList());
        String what = phrases.fill("ready.need", Printable.line(answer.need().id()), say(answer.readiness()));
        return why.isEmpty() ? what : phrases.fill("ready.need.why", what, why);
    }

    /** A reason. */
    public String say(Reason reason) {
        String[] arguments = reason.arguments().stream().map(Printable::line).toArray(String[]::new);
        return phrases.fill("ready.reason." + reason.code(), arguments);
    }

    /** An item that is wanted more than once. */
    public String say(Contention contention) {
        return phrases.fill("ready.contention", Printable.line(contention.item()), claims(contention.takers()),
                claims(contention.losers()));
    }

    private String claims(List<Contention.Claim> claims) {
        return String.join(", ", claims.stream().map(claim -> phrases.fill("ready.claim",
                Printable.line(claim.plannedCase()), Printable.line(claim.need()))).toList());
    }
}
