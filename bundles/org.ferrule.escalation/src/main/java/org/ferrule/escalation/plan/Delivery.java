/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.plan;

import java.util.Optional;
import java.util.Set;

import org.ferrule.escalation.equipment.MoveAnswer;
import org.ferrule.escalation.equipment.Outfitter;
import org.ferrule.escalation.state.CaseFile;
import org.ferrule.escalation.state.SystemState;
import org.ferrule.escalation.technique.Carrier;
import org.ferrule.escalation.technique.Goal;
import org.ferrule.escalation.technique.LengthRange;
import org.ferrule.escalation.technique.Role;
import org.ferrule.escalation.technique.Selection;
import org.ferrule.escalation.technique.ShareRange;
import org.ferrule.escalation.technique.Task;
import org.ferrule.fit.verdict.Verdict;

/** Whether the device that is to be delivered in the end passes a system. */
final class Delivery {
    private final Optional<Role> role;
    private final Outfitter outfitter;

    Delivery(CaseFile file, Outfitter outfitter) {
        this.role = file.deliver().map(Delivery::role);
        this.outfitter = outfitter;
    }

    private static Role role(String device) {
        Selection only = new Selection(Set.of(), Set.of(device), LengthRange.ANY, LengthRange.ANY, LengthRange.ANY,
                ShareRange.ANY, Optional.empty());
        return new Role("deliver", device, only, Task.PASS, Carrier.MAIN_WIRE, Goal.LESION, 1, false);
    }

    /** The whole answer; absent when no device is named. */
    Optional<MoveAnswer.Single> answer(SystemState system) {
        return role.map(r -> outfitter.role(r, system));
    }

    /** Whether it passes; absent when no device is named, or it cannot be asked. */
    Optional<Verdict> verdict(SystemState system) {
        return answer(system).flatMap(MoveAnswer.Single::answer)
                .flatMap(a -> a.ranked().stream().findFirst()).map(c -> c.suitability().verdict());
    }
}
