/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.ready;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

import org.ferrule.shelf.stock.Item;
import org.ferrule.shelf.stock.Lot;
import org.ferrule.shelf.stock.Pick;
import org.ferrule.shelf.stock.Shelf;

/** Reasons that the shelf itself gives. */
final class Shortage {

    private Shortage() {
    }

    /** Why the preferred units are not all there. */
    static List<Reason> of(Need need, LocalDate date, Shelf shelf, int usable) {
        List<Reason> reasons = new ArrayList<>();
        if (need.items().isEmpty()) {
            reasons.add(Reason.of(ReasonCode.NO_ITEM));
        }
        if (usable < need.count()) {
            reasons.add(Reason.of(ReasonCode.NOT_ENOUGH, usable, need.count()));
        }
        for (String id : usable < need.count() ? need.items() : need.preferredItems()) {
            shelf.item(id).ifPresentOrElse(item -> reasons.addAll(expired(item, date)),
                    () -> reasons.add(Reason.of(ReasonCode.NOT_ON_SHELF, id)));
        }
        return reasons;
    }

    private static List<Reason> expired(Item item, LocalDate date) {
        return item.lots().stream().filter(lot -> !lot.isUsableOn(date)).map(lot -> Reason.of(ReasonCode.EXPIRES_BEFORE,
                item.id(), lot.lot(), lot.expiry().orElseThrow(), lot.quantity())).toList();
    }

    /** What to look at on the boxes that are picked. */
    static List<Reason> cautions(Pick pick, LocalDate date) {
        Lot lot = pick.lot();
        if (lot.expiry().isEmpty()) {
            return List.of(Reason.of(ReasonCode.NO_EXPIRY, pick.item(), lot.lot()));
        }
        return lot.expiry().get().equals(date)
                ? List.of(Reason.of(ReasonCode.EXPIRES_THAT_DAY, pick.item(), lot.lot(), date)) : List.of();
    }
}
