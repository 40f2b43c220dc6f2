/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.equipment;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;

import org.ferrule.escalation.technique.Role;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.Length;

/**
 * Puts candidates in order: those that can be planned with first; of these what fits before what is tight, then what
 * leaves the larger lumen (where it holds others), what is not the last one, what leaves more clearance, what expires
 * first, and what the library names first.
 */
final class Ranking {
    private static final Comparator<Length> LARGER_FIRST = Comparator.<Length>naturalOrder().reversed();

    private final Instruments instruments;
    private final Role role;
    private final boolean holdsOthers;

    /**
     * Prepares a ranking.
     *
     * @param holdsOthers whether other devices will run in the one that is chosen
     */
    Ranking(Instruments instruments, Role role, boolean holdsOthers) {
        this.instruments = instruments;
        this.role = role;
        this.holdsOthers = holdsOthers;
    }

    /** Candidates, best first, with why the first is the first. */
    RoleAnswer rank(List<Candidate> candidates) {
        Comparator<Candidate> order = Comparator.comparing((Candidate c) -> !c.isReady())
                .thenComparing(c -> !c.supply().suffices());
        for (Rule rule : rules()) {
            order = order.thenComparing(rule.order());
        }
        List<Candidate> ranked = candidates.stream().sorted(order).toList();
        return new RoleAnswer(role, ranked, choice(ranked));
    }

    private Optional<Choice> choice(List<Candidate> ranked) {
        if (ranked.isEmpty() || !ranked.get(0).isReady()) {
            return Optional.empty();
        }
        if (ranked.size() == 1 || !ranked.get(1).isReady()) {
            return Optional.of(Choice.ONLY_ONE);
        }
        return Optional.of(rules().stream()
                .filter(rule -> rule.order().compare(ranked.get(0), ranked.get(1)) < 0).map(Rule::choice).findFirst()
                .orElse(Choice.FIRST_IN_LIBRARY));
    }

    private record Rule(Choice choice, Comparator<Candidate> order) {
    }

    private List<Rule> rules() {
        Comparator<Optional<Length>> largest = Comparator.comparing(l -> l.orElse(null),
                Comparator.nullsLast(LARGER_FIRST));
        Comparator<Candidate> alike = (a, b) -> 0;
        return List.of(new Rule(Choice.FITS_SURELY, byNumber(c -> c.suitability().verdict() == Verdict.FITS ? 0 : 1)),
                new Rule(Choice.LARGER_LUMEN, holdsOthers ? Comparator.comparing(this::lumen, largest) : alike),
                new Rule(Choice.NOT_THE_LAST, byNumber(c -> c.supply().usable() > role.count() ? 0 : 1)),
                new Rule(Choice.MORE_CLEARANCE, Comparator.comparing(c -> c.suitability().worstClearance(), largest)),
                new Rule(Choice.EXPIRES_FIRST, Comparator.comparing(Ranking::expiry)));
    }

    private static Comparator<Candidate> byNumber(ToIntFunction<Candidate> number) {
        return Comparator.comparingInt(number);
    }

    private Optional<Length> lumen(Candidate candidate) {
        return candidate.device().flatMap(instruments::find).flatMap(this::narrowest);
    }

    private Optional<Length> narrowest(Device device) {
        return device.mainLumen().flatMap(lumen -> Bore.narrowest(instruments.read(device), lumen));
    }

    private static LocalDate expiry(Candidate candidate) {
        return candidate.supply().picks().stream().flatMap(pick -> pick.lot().expiry().stream())
                .min(Comparator.naturalOrder()).orElse(LocalDate.MAX);
    }
}
