/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.equipment;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.ferrule.escalation.state.Target;
import org.ferrule.escalation.technique.LengthRange;
import org.ferrule.escalation.technique.Move;
import org.ferrule.escalation.technique.Need;
import org.ferrule.quantity.Length;

/** Whether what must hold before a move does hold. What nobody states does not hold. */
final class Preconditions {
    private final Target target;
    private final Map<String, Boolean> facts;

    Preconditions(Target target, Map<String, Boolean> facts) {
        this.target = target;
        this.facts = facts;
    }

    List<Lack> lacks(Move move) {
        List<Lack> lacks = new ArrayList<>();
        move.needs().forEach(need -> lack(need).ifPresent(lacks::add));
        return lacks;
    }

    private Optional<Lack> lack(Need need) {
        if (need instanceof Need.Fact fact) {
            Boolean stated = facts.get(fact.fact());
            return Boolean.TRUE.equals(stated) ? Optional.empty()
                    : Optional.of(new Lack.FactMissing(fact.fact(), stated != null));
        }
        if (need instanceof Need.Vessel vessel) {
            return size(false, vessel.diameter(), target.vessel());
        }
        return size(true, ((Need.Branch) need).diameter(), target.branch());
    }

    private static Optional<Lack> size(boolean branch, LengthRange asked, Optional<Length> stated) {
        return stated.filter(asked::contains).isPresent() ? Optional.empty()
                : Optional.of(new Lack.WrongSize(branch, asked, stated));
    }
}
