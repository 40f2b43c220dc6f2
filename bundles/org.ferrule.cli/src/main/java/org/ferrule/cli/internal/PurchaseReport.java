/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.util.ArrayList;
import java.util.List;

import org.ferrule.purchase.Purchase;
import org.ferrule.purchase.PurchaseAnswer;
import org.ferrule.purchase.Uncoverable;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** What to buy, or why that cannot be said. */
public final class PurchaseReport {
    private final PurchaseAnswer answer;

    public PurchaseReport(PurchaseAnswer answer) {
        this.answer = answer;
    }

    /** As lines of text. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        if (answer instanceof Purchase purchase) {
            purchase.orders().forEach(order -> lines.add(order.count() + " x " + order.item()));
            lines.add(purchase.units() == 0 ? "nothing has to be bought" : purchase.units() + " units"
                    + purchase.cost().map(cost -> ", " + cost.toPlainString()).orElse(", price not known"));
            lines.add(isConfirmed(purchase) ? "two searches agree: nothing better does"
                    : "there may be a better one: the searches did not end");
        } else if (answer instanceof Uncoverable uncoverable) {
            uncoverable.gaps().forEach(gap -> lines.add(gap.plannedCase() + ", " + gap.axis() + ": " + gap.possible()
                    + " of " + gap.wanted() + " can be covered" + (gap.alone() ? "" : ", as others need the same units")
                    + (gap.needs().isEmpty() ? "" : " (" + String.join(", ", gap.needs()) + ")")));
        } else {
            lines.add("not decided: the solver ended without an answer that stands up to the check");
        }
        return lines;
    }

    /** As one JSON object. */
    public ObjectNode json() {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        if (answer instanceof Purchase purchase) {
            node.put("covered", true).put("units", purchase.units());
            purchase.cost().ifPresent(cost -> node.put("cost", cost));
            node.put("confirmed", isConfirmed(purchase));
            ArrayNode orders = node.putArray("orders");
            purchase.orders().forEach(o -> orders.addObject().put("item", o.item()).put("count", o.count()));
        } else if (answer instanceof Uncoverable uncoverable) {
            ArrayNode gaps = node.put("covered", false).putArray("gaps");
            uncoverable.gaps().forEach(gap -> gaps.addObject().put("case", gap.plannedCase()).put("axis", gap.axis())
                    .put("wanted", gap.wanted()).put("possible", gap.possible()).put("alone", gap.alone()));
        } else {
            node.putNull("covered");
        }
        return node;
    }

    private static boolean isConfirmed(Purchase purchase) {
        return purchase.confirmation() == Purchase.Confirmation.CONFIRMED;
    }
}
