/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.stock;

import static org.ferrule.shelf.stock.Stock.at;
import static org.ferrule.shelf.stock.Stock.item;
import static org.ferrule.shelf.stock.Stock.lot;
import static org.ferrule.shelf.stock.Stock.serial;
import static org.ferrule.shelf.stock.Stock.shelf;
import static org.ferrule.shelf.stock.Stock.use;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class ReconciliationTest {
    private final Shelf shelf = shelf(item("b", lot("A", "2027-04-01", 3), lot("B", "", 1)), item("c"),
            item("d", at("up", lot("A", "", 2)), at("down", lot("A", "", 5))),
            item("e", serial("7", lot("A", "", 1)), serial("8", lot("A", "", 1))));

    private static List<String> contradictions(Executable executable) {
        StockException e = assertThrows(StockException.class, executable);
        assertEquals(String.join("; ", e.contradictions()), e.getMessage());
        return e.contradictions();
    }

    @Test
    void takesUnitsAndLeavesTheShelfAsItWas() throws StockException {
        assertEquals(List.of(lot("A", "2027-04-01", 1), lot("B", "", 1)),
                shelf.take(use("b", "A", 2)).item("b").orElseThrow().lots());
        assertEquals(List.of(lot("B", "", 1)), shelf.take(use("b", "A", 3)).item("b").orElseThrow().lots());
        assertEquals(4, shelf.item("b").orElseThrow().quantity());
    }

    @Test
    void whatIsTakenAndPutBackIsThereAgain() throws StockException {
        assertEquals(shelf, shelf.take(use("b", "A", 2)).put("b", lot("A", "2027-04-01", 2)));
        assertEquals(shelf, shelf.take(use("b", "B", 1)).put("b", lot("B", "", 1)));
        assertEquals(List.of(lot("A", "", 2)), shelf.put("c", lot("A", "", 2)).item("c").orElseThrow().lots());
    }

    @Test
    void picksAreTakenWhereTheyLie() throws StockException {
        Pick pick = new Pick("d", at("down", lot("A", "", 5)), 4);
        assertEquals(List.of(at("up", lot("A", "", 2)), at("down", lot("A", "", 1))),
                shelf.take(pick.asUse()).item("d").orElseThrow().lots());
        assertEquals(List.of(serial("8", lot("A", "", 1))),
                shelf.take(new Use("e", "A", Optional.of("7"), Optional.empty(), 1)).item("e").orElseThrow().lots());
    }

    @Test
    void saysWhatCannotBeTaken() {
        assertEquals(List.of("item \"b\", lot \"A\": 4 used, but 3 there"),
                contradictions(() -> shelf.take(use("b", "A", 4))));
        assertEquals(List.of("item \"b\", lot \"C\": 1 used, but 0 there"),
                contradictions(() -> shelf.take(use("b", "C", 1))));
        assertEquals(List.of("no item \"x\" on the shelf"), contradictions(() -> shelf.take(use("x", "A", 1))));
        assertEquals(List.of("item \"e\", lot \"A\": 1 used, but 0 there"),
                contradictions(() -> shelf.take(use("e", "A", 1))));
        assertEquals(List.of("item \"d\", lot \"A\" lies in several places: \"up\", \"down\""),
                contradictions(() -> shelf.take(use("d", "A", 1))));
        assertEquals(List.of("item \"b\", lot \"A\": 4 used, but 3 there"),
                contradictions(() -> shelf.take(new Use("b", "A", Optional.empty(), Optional.of(""), 4))));
        assertEquals(List.of("item \"d\", lot \"A\", serial number \"9\" at \"up\": 1 used, but 0 there"),
                contradictions(() -> shelf.take(new Use("d", "A", Optional.of("9"), Optional.of("up"), 1))));
    }

    @Test
    void saysWhatCannotBePut() {
        assertEquals(List.of("no item \"x\" on the shelf"), contradictions(() -> shelf.put("x", lot("A", "", 1))));
        assertEquals(List.of("item \"b\", lot \"A\" is there with another expiry date"),
                contradictions(() -> shelf.put("b", lot("A", "2027-04-02", 1))));
        assertTrue(contradictions(() -> shelf.put("b", at("up", lot("A", "2027-04-02", 1)))).get(0)
                .contains("two expiry"));
        assertEquals(List.of("item \"e\", lot \"A\", serial number \"7\" is there with another expiry date"),
                contradictions(() -> shelf.put("e", serial("7", lot("A", "2027-04-02", 1)))));
        assertTrue(contradictions(() -> shelf.put("e", serial("7", lot("A", "", 1)))).get(0).contains("\"7\""));
        assertEquals(1, contradictions(() -> shelf.put("b", lot("A", "2027-04-01", Integer.MAX_VALUE))).size());
    }

    @Test
    void reconcilesAllUsesOrNone() throws StockException {
        Shelf after = shelf.reconcile(List.of(use("b", "A", 2), use("b", "B", 1), use("b", "A", 1)));
        assertEquals(List.of(), after.item("b").orElseThrow().lots());
        assertEquals(shelf, shelf.reconcile(List.of()));
        assertEquals(List.of("item \"b\", lot \"A\": 2 used, but 1 there", "no item \"x\" on the shelf"),
                contradictions(
                        () -> shelf.reconcile(
                                List.of(use("b", "A", 2), use("b", "A", 2), use("x", "A", 1), use("b", "B", 1)))));
    }
}
