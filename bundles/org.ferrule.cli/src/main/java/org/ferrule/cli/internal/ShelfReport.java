/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import org.ferrule.engine.plan.AssembledCase;
import org.ferrule.escalation.equipment.Stock;
import org.ferrule.escalation.plan.TechniqueReadiness;
import org.ferrule.shelf.ready.NeedAnswer;
import org.ferrule.shelf.ready.Readiness;
import org.ferrule.shelf.stock.BelowPar;
import org.ferrule.shelf.stock.Item;
import org.ferrule.shelf.stock.Lot;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** What a shelf has on a day, and how ready cases are. */
public final class ShelfReport {
    private final Stock stock;
    private final LocalDate day;
    private final Map<String, List<TechniqueReadiness>> cases;

    private ShelfReport(Stock stock, LocalDate day, Map<String, List<TechniqueReadiness>> cases) {
        this.stock = stock;
        this.day = day;
        this.cases = cases;
    }

    /** Looks at a shelf on a day, and at cases on theirs. */
    public static ShelfReport of(Stock stock, LocalDate day, Map<String, AssembledCase> cases) {
        Map<String, List<TechniqueReadiness>> ready = new LinkedHashMap<>();
        cases.forEach((name, assembled) -> ready.put(name, TechniqueReadiness.of(assembled.instruments(),
                assembled.ladder(), assembled.file(), assembled.stock())));
        return new ShelfReport(stock, day, ready);
    }

    /** Whether nothing has expired and nothing is below par. */
    public boolean isInOrder() {
        return expired().isEmpty() && stock.shelf().belowPar(day).isEmpty();
    }

    private record ExpiredLot(Item item, Lot lot) {
    }

    private List<ExpiredLot> expired() {
        return stock.shelf().items().stream().flatMap(item -> item.lots().stream()
                .filter(lot -> !lot.isUsableOn(day)).map(lot -> new ExpiredLot(item, lot))).toList();
    }

    /** As lines of text. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(stock.shelf().items().size() + " items, "
                + stock.shelf().items().stream().mapToInt(item -> item.lots().size()).sum() + " lots, "
                + stock.shelf().items().stream().mapToInt(Item::quantity).sum() + " units on " + day);
        expired().forEach(e -> lines.add("expired: " + e.item().name() + ", lot " + e.lot().lot() + ", "
                + e.lot().expiry().orElseThrow() + ", " + e.lot().quantity() + ", " + e.lot().location()));
        stock.shelf().belowPar(day).forEach(b -> lines.add("below par: " + b.item().name() + ", " + b.usable() + " of "
                + b.item().parLevel()));
        cases.forEach((name, techniques) -> {
            lines.add("");
            lines.add(name + ":");
            techniques.forEach(technique -> lines.add("  " + technique.technique().name() + ": " + word(technique)
                    + lacking(technique)));
        });
        return lines;
    }

    private static String word(TechniqueReadiness technique) {
        return technique.readiness().map(ShelfReport::word).orElse("not possible in this case");
    }

    private static String word(Readiness readiness) {
        return switch (readiness) {
            case READY -> "ready";
            case LAST_ONE -> "ready but last one";
            case SUBSTITUTE -> "substitute";
            case EXPIRED -> "expired before the case date";
            case MISSING -> "missing";
        };
    }

    private static String lacking(TechniqueReadiness technique) {
        String needs = technique.needs().stream().filter(n -> !n.readiness().isCovered()).map(n -> n.need().id())
                .collect(Collectors.joining(", "));
        return needs.isEmpty() ? "" : " (" + needs + ")";
    }

    /** As one JSON object. */
    public ObjectNode json() {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("day", day.toString());
        ArrayNode items = node.putArray("items");
        stock.shelf().items().forEach(item -> items.addObject().put("id", item.id()).put("name", item.name())
                .put("usable", item.usableOn(day)).put("quantity", item.quantity()).put("parLevel", item.parLevel()));
        ArrayNode expired = node.putArray("expired");
        expired().forEach(e -> expired.addObject().put("item", e.item().id()).put("lot", e.lot().lot())
                .put("expiry", e.lot().expiry().orElseThrow().toString()).put("quantity", e.lot().quantity()));
        ArrayNode below = node.putArray("belowPar");
        for (BelowPar each : stock.shelf().belowPar(day)) {
            below.addObject().put("item", each.item().id()).put("usable", each.usable()).put("missing",
                    each.missing());
        }
        ObjectNode ready = node.putObject("cases");
        cases.forEach((name, techniques) -> techniques.forEach(t -> write(ready.withObject("/" + pointer(name))
                .putObject(t.technique().id()), t)));
        return node;
    }

    private static String pointer(String name) {
        return name.replace("~", "~0").replace("/", "~1");
    }

    private static void write(ObjectNode node, TechniqueReadiness technique) {
        Optional<Readiness> readiness = technique.readiness();
        node.put("readiness", readiness.map(r -> r.name().toLowerCase(Locale.ROOT).replace('_', ' '))
                .orElse("not possible"));
        ArrayNode needs = node.putArray("lacking");
        technique.needs().stream().filter(n -> !n.readiness().isCovered()).map(NeedAnswer::need)
                .forEach(need -> needs.add(need.id()));
    }
}
