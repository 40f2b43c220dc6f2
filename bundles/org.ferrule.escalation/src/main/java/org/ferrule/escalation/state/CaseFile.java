/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.state;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

import org.ferrule.escalation.technique.Costs;

/**
 * A case: what is in place, where a device must arrive, what is to be spared, what was tried. Nothing in it tells who
 * the patient is.
 *
 * @param title in words
 * @param day on which it is done; what has expired before cannot be used
 * @param system what was in place when planning began
 * @param target where a device must arrive
 * @param deliver id of the device that must be delivered in the end; absent when nobody says
 * @param facts what someone stated about it, by id
 * @param aim what is to be spared
 * @param spent what was used up before the log began
 * @param log what was tried, in order
 */
public record CaseFile(String title, LocalDate day, SystemState system, Target target, Optional<String> deliver,
        Map<String, Boolean> facts, Aim aim, Costs spent, List<Attempt> log) {
    public CaseFile {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(day, "day");
        Objects.requireNonNull(system, "system");
        Objects.requireNonNull(target, "target");
        Objects.requireNonNull(deliver, "deliver");
        facts = Map.copyOf(facts);
        Objects.requireNonNull(aim, "aim");
        Objects.requireNonNull(spent, "spent");
        log = List.copyOf(log);
    }

    /** The same case with one more attempt. */
    public CaseFile logging(Attempt attempt) {
        List<Attempt> longer = new ArrayList<>(log);
        longer.add(attempt);
        return new CaseFile(title, day, system, target, deliver, facts, aim, spent, longer);
    }

    /** What is used up by now. */
    public Costs used() {
        return log.stream().map(Attempt::used).reduce(spent, Costs::plus);
    }
}
