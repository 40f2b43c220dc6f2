/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.sample;

import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.ferrule.escalation.state.Aim;
import org.ferrule.escalation.state.Attempt;
import org.ferrule.escalation.state.CaseFile;
import org.ferrule.escalation.state.Outcome;
import org.ferrule.escalation.state.SystemState;
import org.ferrule.escalation.state.Target;
import org.ferrule.escalation.technique.Costs;
import org.ferrule.escalation.technique.Resource;
import org.ferrule.quantity.Length;

/** Cases in the making: 6 Fr guide in a 7 Fr sheath, a wire of 190 cm across a lesion that ends 9 cm beyond the guide. */
public final class Cases {
    /** Time is to be spared, stopping costs 100 minutes, no rule but cost. */
    public static final Aim TIME = new Aim(Resource.TIME, 100, Map.of(), false, false, false, 1);

    private Cases() {
    }

    /** The system in place. */
    public static SystemState system(String guide, String wire) {
        return new SystemState(Optional.of("sheath"), Optional.empty(), guide, Optional.empty(), Optional.empty(),
                Optional.of(wire), Optional.empty(), Optional.empty());
    }

    /** A lesion from 7 to 9 cm beyond the guide in a vessel of 3 mm with a branch of 2 mm before it. */
    public static Target target() {
        return new Target(Optional.of(Length.ofMm(90)), Optional.of(Length.ofMm(70)), Optional.of(Length.ofMm(3)),
                Optional.of(Length.ofMm(2)), Optional.of(Length.ofMm(60)), List.of());
    }

    /** The usual case, its wire seen in the true lumen. */
    public static CaseFile usual() {
        return of(system("guide-6", "wire-190"), Map.of("true-lumen", true), TIME);
    }

    /** A case without a log. */
    public static CaseFile of(SystemState system, Map<String, Boolean> facts, Aim aim) {
        return new CaseFile("case of the test", Room.DAY, system, target(), Optional.empty(), facts, aim, Costs.NONE,
                List.of());
    }

    /** The same with another aim. */
    public static CaseFile with(CaseFile file, Aim aim) {
        return new CaseFile(file.title(), file.day(), file.system(), file.target(), file.deliver(), file.facts(), aim,
                file.spent(), file.log());
    }

    /** What was tried and failed, with one unit taken. */
    public static Attempt failed(String move, String role, String item) {
        return new Attempt(move, Outcome.FAILED, new Costs(5, 5, 50, 0),
                List.of(new Attempt.UsedUnit(role, item, "L-" + item)), "");
    }
}
