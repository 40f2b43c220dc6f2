/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.ferrule.escalation.state.Attempt.UsedUnit;
import org.ferrule.escalation.state.Attempt;
import org.ferrule.model.ShelfDocument;
import org.ferrule.model.StockItem;
import org.ferrule.model.StockLot;

/** Takes the units that a case has used off the shelf. */
public final class UnitTaking {
    private final ShelfDocument shelf;
    private final List<String> missing = new ArrayList<>();

    private UnitTaking(ShelfDocument shelf) {
        this.shelf = shelf;
    }

    /**
     * Takes all units of a log. What the shelf does not have is told and left alone; a lot of which nothing is left is
     * gone.
     *
     * @param shelf is changed
     * @return what it did not have, one sentence each
     */
    public static List<String> take(ShelfDocument shelf, List<Attempt> log) {
        UnitTaking taking = new UnitTaking(shelf);
        log.forEach(attempt -> attempt.units().forEach(taking::take));
        return taking.missing;
    }

    private void take(UsedUnit unit) {
        Optional<StockItem> item = shelf.getItems().stream().filter(i -> unit.item().equals(i.getId())).findFirst();
        Optional<StockLot> lot = item.flatMap(i -> i.getLots().stream().filter(l -> isOf(l, unit)).findFirst());
        if (lot.isEmpty()) {
            missing.add("the shelf has no unit of item \"" + unit.item() + "\""
                    + (unit.lot().isEmpty() ? "" : ", lot \"" + unit.lot() + "\""));
        } else if (lot.get().getQuantity() > 1) {
            lot.get().setQuantity(lot.get().getQuantity() - 1);
        } else {
            item.get().getLots().remove(lot.get());
        }
    }

    private static boolean isOf(StockLot lot, UsedUnit unit) {
        return lot.getQuantity() > 0 && (lot.getLot() == null ? "" : lot.getLot()).equals(unit.lot());
    }
}
