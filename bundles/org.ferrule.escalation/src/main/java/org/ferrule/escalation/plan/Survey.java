/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

import org.ferrule.escalation.equipment.MoveAnswer;
import org.ferrule.escalation.equipment.Outfitter;
import org.ferrule.escalation.technique.Ladder;
import org.ferrule.escalation.technique.Setup;
import org.ferrule.escalation.technique.Technique;

/** What can be done from where a case stands, in every system that set-ups lead to. */
final class Survey {
    private final Ladder ladder;
    private final Progress progress;
    private final Outfitter outfitter;
    private final Situations situations;
    private final List<Availability> techniques = new ArrayList<>();

    /** Asks about all techniques that have tries left. */
    Survey(Ladder ladder, Progress progress, Outfitter outfitter) {
        this.ladder = ladder;
        this.progress = progress;
        this.outfitter = outfitter;
        this.situations = new Situations(outfitter, relevantSetups(), progress.setups(), progress.system());
        ladder.techniques().stream().filter(this::hasTriesLeft).forEach(t -> techniques.add(availability(t)));
    }

    /** What of a technique is left to try. */
    private boolean hasTriesLeft(Technique technique) {
        return technique.tries().size() > progress.triesOf(technique.id());
    }

    /** Those that a technique with tries left needs, directly or not, and that have not failed. */
    private List<Setup> relevantSetups() {
        Set<Setup> needed = ladder.techniques().stream().filter(this::hasTriesLeft)
                .flatMap(t -> ladder.setupsOf(t).stream()).collect(Collectors.toSet());
        return ladder.setups().stream().filter(needed::contains)
                .filter(s -> !progress.failedSetups().contains(s.id())).toList();
    }

    private Availability availability(Technique technique) {
        Map<Set<String>, MoveAnswer> answers = new LinkedHashMap<>();
        situations.states().forEach((there, state) -> {
            if (there.containsAll(technique.setups())) {
                answers.put(there, outfitter.outfit(technique, state));
            }
        });
        if (answers.isEmpty()) {
            return new Availability(technique, Set.of(), Set.of(),
                    outfitter.outfit(technique, progress.system()), false);
        }
        return Availability.of(technique, answers, progress.setups());
    }

    /** Set-ups that can be done. */
    List<Setup> setups() {
        return situations.possible().stream().filter(s -> !progress.setups().contains(s.id())).toList();
    }

    /** What was answered about set-ups that were asked about. */
    Map<String, MoveAnswer> setupAnswers() {
        return situations.firstAnswers();
    }

    /** All techniques that have tries left. */
    List<Availability> techniques() {
        return techniques;
    }
}
