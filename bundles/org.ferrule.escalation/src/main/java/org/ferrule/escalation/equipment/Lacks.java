/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.equipment;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.escalation.technique.Role;
import org.ferrule.shelf.stock.Item;
import org.ferrule.shelf.stock.Lot;

/** Says why a role has nobody to play it. */
final class Lacks {
    private final Stock stock;
    private final Stock before;
    private final LocalDate day;

    /**
     * Compares two states of the shelf.
     *
     * @param stock what is there now
     * @param before what was there before earlier steps took some of it
     */
    Lacks(Stock stock, Stock before, LocalDate day) {
        this.stock = stock;
        this.before = before;
        this.day = day;
    }

    /** Nothing when somebody plays it. */
    List<Lack> of(RoleAnswer answer) {
        if (answer.chosen().isPresent()) {
            return List.of();
        }
        Role role = answer.role();
        if (answer.ranked().isEmpty()) {
            return List.of(role.selection().equipment().isPresent() ? new Lack.NotOnShelf(role, List.of())
                    : new Lack.NothingMatches(role));
        }
        List<Lack> lacks = new ArrayList<>();
        List<Candidate> there = answer.ranked().stream().filter(c -> c.supply().suffices()).toList();
        List<Candidate> usable = answer.ranked().stream().filter(c -> c.suitability().isUsable()).toList();
        there.stream().findFirst().ifPresent(nearest -> lacks.add(new Lack.DoesNotPass(role, nearest)));
        supply(role, usable).ifPresent(lacks::add);
        if (lacks.isEmpty()) {
            lacks.add(new Lack.DoesNotPass(role, answer.ranked().get(0)));
        }
        return lacks;
    }

    private Optional<Lack> supply(Role role, List<Candidate> usable) {
        if (usable.isEmpty()) {
            return Optional.empty();
        }
        return usedUp(role, usable).or(() -> expired(role, usable)).or(() -> Optional.of(new Lack.NotOnShelf(role,
                usable.stream().flatMap(c -> c.device().stream()).toList())));
    }

    private Optional<Lack> usedUp(Role role, List<Candidate> usable) {
        return items(before, usable).filter(item -> item.usableOn(day) >= role.count()).findFirst()
                .map(item -> new Lack.UsedUp(role, item.id()));
    }

    private Optional<Lack> expired(Role role, List<Candidate> usable) {
        return items(stock, usable).flatMap(item -> item.lots().stream().filter(lot -> !lot.isUsableOn(day))
                .max(Comparator.comparing(lot -> lot.expiry().orElseThrow())).stream()
                .map(lot -> expired(role, item, lot))).findFirst();
    }

    private static Lack expired(Role role, Item item, Lot lot) {
        return new Lack.Expired(role, item.id(), lot.expiry().orElseThrow());
    }

    private static Stream<Item> items(Stock stock, List<Candidate> candidates) {
        return candidates.stream().flatMap(c -> c.supply().items().stream())
                .flatMap(id -> stock.shelf().item(id).stream());
    }
}
