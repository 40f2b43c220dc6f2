/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.words;

import java.util.List;

import org.ferrule.chart.words.Phrases;
import org.ferrule.escalation.plan.LeftOut;
import org.ferrule.escalation.plan.Remedy;

/** What is not in a plan, why, and what would change that. */
public final class LeftOutWords {
    private final Phrases phrases;
    private final PlanNames names;
    private final LackWords lacks;

    LeftOutWords(Phrases phrases, PlanNames names, LackWords lacks) {
        this.phrases = phrases;
        this.names = names;
        this.lacks = lacks;
    }

    /** Its name. */
    public String name(LeftOut leftOut) {
        return names.move(leftOut.move().id());
    }

    /** Why it is not in the plan, in one line. */
    public String why(LeftOut leftOut) {
        return leftOut.lacks().isEmpty() ? why(leftOut.why()) : String.join("; ", lacks.say(leftOut.lacks()));
    }

    /** The first reason, shortened to what a line holds, and how many more there are. */
    public String brief(LeftOut leftOut) {
        return leftOut.lacks().isEmpty() ? why(leftOut.why()) : lacks.brief(leftOut.lacks());
    }

    /** A kind of reason. */
    public String why(LeftOut.Why why) {
        return phrases.get("leftOut." + why);
    }

    /** What would make it possible, one line each. */
    public List<String> remedies(LeftOut leftOut) {
        return leftOut.remedies().stream().map(this::remedy).toList();
    }

    /** One change, as something to do. */
    public String remedy(Remedy remedy) {
        if (remedy instanceof Remedy.State state) {
            return phrases.fill("remedy.State", names.fact(state.fact()));
        }
        if (remedy instanceof Remedy.TakeOut out) {
            return phrases.fill("remedy.TakeOut", phrases.get("slot." + out.slot()), names.device(out.device()));
        }
        if (remedy instanceof Remedy.Obtain obtain) {
            return phrases.fill("remedy.Obtain", names.device(obtain.what()));
        }
        Remedy.ExchangeGuide guide = (Remedy.ExchangeGuide) remedy;
        return phrases.fill(guide.onShelf() ? "remedy.ExchangeGuide.onShelf" : "remedy.ExchangeGuide",
                names.device(guide.guide()), names.device(guide.device()));
    }
}
