/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.ready;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.ferrule.shelf.ready.Contention.Claim;
import org.ferrule.shelf.stock.Item;
import org.ferrule.shelf.stock.Pick;
import org.ferrule.shelf.stock.Shelf;
import org.ferrule.shelf.stock.StockException;

/** What is left on a shelf while needs are served, and who took what. */
final class Ledger {

    /** Units that a need has taken. */
    private record Taken(Claim by, Pick pick) {
    }

    private final List<Taken> taken = new ArrayList<>();
    private final Map<String, List<Claim>> losers = new LinkedHashMap<>();
    private Shelf left;

    Ledger(Shelf shelf) {
        left = shelf;
    }

    Shelf left() {
        return left;
    }

    /** Answers a need and takes what it picks. */
    NeedAnswer serve(PlannedCase planned, Need need) {
        Claim claim = new Claim(planned.id(), need.id());
        List<Pick> preferred = picks(need.preferredItems(), need.count(), planned.date());
        List<Pick> second = picks(need.substituteItems(), need.count() - count(preferred), planned.date());
        List<Pick> picks = new ArrayList<>(preferred);
        picks.addAll(second);
        Shelf before = left;
        picks.forEach(this::remove);
        Readiness readiness = readiness(need, planned.date(), before, preferred, second);
        List<Reason> reasons = new ArrayList<>();
        if (readiness.compareTo(Readiness.LAST_ONE) > 0) {
            reasons.addAll(Shortage.of(need, planned.date(), before, count(picks)));
            reasons.addAll(takenEarlier(need, planned.date(), claim, readiness));
        }
        second.forEach(pick -> reasons.add(Reason.of(ReasonCode.SECOND_CHOICE, pick.item(), pick.count())));
        if (readiness.isCovered() && usable(left, need.items(), planned.date()) == 0) {
            reasons.add(Reason.of(ReasonCode.LAST_UNITS));
        }
        picks.forEach(pick -> reasons.addAll(Shortage.cautions(pick, planned.date())));
        picks.forEach(pick -> taken.add(new Taken(claim, pick)));
        return new NeedAnswer(need, readiness, picks, reasons);
    }

    private Readiness readiness(Need need, LocalDate date, Shelf before, List<Pick> preferred, List<Pick> second) {
        if (count(preferred) + count(second) < need.count()) {
            int all = need.items().stream().flatMap(item -> before.item(item).stream()).mapToInt(Item::quantity).sum();
            return all < need.count() ? Readiness.MISSING : Readiness.EXPIRED;
        }
        if (!second.isEmpty()) {
            return Readiness.SUBSTITUTE;
        }
        return usable(left, need.preferredItems(), date) == 0 ? Readiness.LAST_ONE : Readiness.READY;
    }

    private List<Pick> picks(List<String> items, int wanted, LocalDate date) {
        List<Pick> picks = new ArrayList<>();
        for (String item : items) {
            picks.addAll(left.pick(item, date, wanted - count(picks)));
        }
        return picks;
    }

    /** Units that earlier needs took of the items that this one lacks, as far as it could use them. */
    private List<Reason> takenEarlier(Need need, LocalDate date, Claim claim, Readiness readiness) {
        List<String> lacking = readiness.isCovered() ? need.preferredItems() : need.items();
        List<Reason> reasons = new ArrayList<>();
        for (Taken earlier : taken) {
            if (lacking.contains(earlier.pick().item()) && earlier.pick().lot().isUsableOn(date)) {
                reasons.add(Reason.of(ReasonCode.TAKEN_EARLIER, earlier.pick().item(), earlier.pick().count(),
                        earlier.by().plannedCase(), earlier.by().need()));
                List<Claim> known = losers.computeIfAbsent(earlier.pick().item(), item -> new ArrayList<>());
                if (!known.contains(claim)) {
                    known.add(claim);
                }
            }
        }
        return reasons;
    }

    List<Contention> contentions() {
        return losers.entrySet().stream().map(entry -> contention(entry.getKey(), entry.getValue())).toList();
    }

    private Contention contention(String item, List<Claim> lost) {
        List<Taken> units = taken.stream().filter(unit -> unit.pick().item().equals(item)).toList();
        return new Contention(item, units.stream().mapToInt(unit -> unit.pick().count()).sum(),
                units.stream().map(Taken::by).distinct().toList(), lost);
    }

    private void remove(Pick pick) {
        try {
            left = left.take(pick.asUse());
        } catch (StockException e) {
            throw new IllegalStateException("picked what is not there: " + pick, e);
        }
    }

    private static int count(List<Pick> picks) {
        return picks.stream().mapToInt(Pick::count).sum();
    }

    private static int usable(Shelf shelf, List<String> items, LocalDate date) {
        return items.stream().flatMap(item -> shelf.item(item).stream()).mapToInt(item -> item.usableOn(date)).sum();
    }
}
