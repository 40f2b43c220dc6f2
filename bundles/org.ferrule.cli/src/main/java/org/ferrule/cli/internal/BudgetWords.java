/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

import org.ferrule.fit.engineering.change.Place;
import org.ferrule.fit.engineering.size.Contributor;
import org.ferrule.fit.engineering.size.ToleranceBudget;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthFormat;
import org.ferrule.quantity.LengthUnit;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** A tolerance budget in words and as JSON; what must be given up is rounded up, what may be required down. */
public final class BudgetWords {
    private static final int DECIMALS = 4;
    private static final LengthFormat UP = LengthFormat.atLeast(LengthUnit.MILLIMETRE, DECIMALS);
    private static final LengthFormat DOWN = LengthFormat.clearance(LengthUnit.MILLIMETRE, DECIMALS);

    private BudgetWords() {
    }

    /** In words, a line for each thing that would help. */
    public static List<String> lines(ToleranceBudget budget) {
        List<String> lines = new ArrayList<>();
        lines.add("worst clearance " + DOWN.format(budget.clearance().worst()) + ", required "
                + UP.format(budget.required()) + ": " + UP.format(budget.missing()) + " are missing");
        budget.contributors().forEach(c -> lines.add("  " + name(c.place()) + ": " + alone(c) + "; as its share "
                + UP.format(c.shared())));
        lines.add(budget.afterSharing().map(v -> "  with every share given the solver says \"" + v.word() + "\"")
                .orElseGet(() -> "  even without any spread " + UP.format(budget.missingWithoutSpread())
                        + " would be missing"));
        lines.add(budget.requiredInstead().map(r -> "  or a required clearance of at most " + DOWN.format(r))
                .orElse("  no required clearance would do: the worst case overlaps"));
        return lines;
    }

    private static String alone(Contributor contributor) {
        String end = (contributor.assumed() ? "assumed" : "stated") + " spread " + UP.format(contributor.spread());
        return end + (contributor.isEnoughAlone() ? ", alone it must be " + UP.format(contributor.alone()) + " less"
                : ", alone it is not enough");
    }

    private static String name(Place place) {
        if (place instanceof Place.Wire) {
            return "wire beside " + place.device().id();
        }
        return (place instanceof Place.Bore ? "lumen \"" : "shaft \"") + place.name() + "\" of "
                + place.device().id();
    }

    /** As JSON, in millimetres. */
    public static ObjectNode json(ToleranceBudget budget) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("worstMm", Millimetres.of(budget.clearance().worst(), RoundingMode.FLOOR));
        node.put("requiredMm", Millimetres.of(budget.required(), RoundingMode.CEILING));
        node.put("missingMm", up(budget.missing()));
        ArrayNode contributors = node.putArray("contributors");
        budget.contributors().forEach(c -> contributors.addObject().put("device", c.place().device().id())
                .put("place", name(c.place())).put("assumed", c.assumed()).put("spreadMm", up(c.spread()))
                .put("enoughAlone", c.isEnoughAlone()).put("aloneMm", up(c.alone())).put("shareMm", up(c.shared())));
        node.put("afterSharing", budget.afterSharing().map(v -> v.word()).orElse(null));
        node.put("missingWithoutSpreadMm", up(budget.missingWithoutSpread()));
        node.put("requiredInsteadMm",
                budget.requiredInstead().map(r -> Millimetres.of(r, RoundingMode.FLOOR)).orElse(null));
        return node;
    }

    private static BigDecimal up(Length length) {
        return Millimetres.of(length, RoundingMode.CEILING);
    }
}
