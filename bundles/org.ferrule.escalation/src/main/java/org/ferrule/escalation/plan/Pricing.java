/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.plan;

import java.util.List;

import org.ferrule.escalation.equipment.MoveAnswer;
import org.ferrule.escalation.equipment.Stock;
import org.ferrule.escalation.technique.Costs;
import org.ferrule.shelf.stock.Pick;

/** What the units of a move cost. */
final class Pricing {
    private Pricing() {
    }

    /** Units that are used up: of each role what was chosen, of equipment that stays nothing. */
    static List<Pick> taken(MoveAnswer answer) {
        return answer.roles().stream().filter(r -> r.role().selection().equipment().isEmpty())
                .flatMap(r -> r.chosen().stream()).flatMap(c -> c.supply().picks().stream()).toList();
    }

    /** Their price; a unit without a price counts nothing. */
    static Costs price(List<Pick> picks, Stock stock) {
        double money = picks.stream().mapToDouble(pick -> stock.shelf().item(pick.item())
                .flatMap(item -> item.price()).map(price -> price.doubleValue() * pick.count()).orElse(0.0)).sum();
        return new Costs(0, 0, 0, money);
    }
}
