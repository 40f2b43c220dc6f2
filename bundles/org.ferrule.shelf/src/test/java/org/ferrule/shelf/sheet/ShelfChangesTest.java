/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.ferrule.shelf.sheet.ShelfChange.Kind;
import org.ferrule.shelf.stock.Item;
import org.ferrule.shelf.stock.Lot;
import org.ferrule.shelf.stock.Shelf;
import org.junit.jupiter.api.Test;

class ShelfChangesTest {
    private static final Item BALLOON = item("balloon", "310", lot("A", 3, "cabinet 2"), lot("B", 1, "cabinet 2"));
    private static final Item WIRE = item("wire", "90", lot("W", 5, "wall"));
    private static final Shelf NOW = new Shelf(List.of(BALLOON, WIRE));

    private static Item item(String id, String price, Lot... lots) {
        return new Item(id, Optional.of("device-" + id), Optional.empty(), List.of(lots), 2,
                Optional.of(new BigDecimal(price)), "Name of " + id);
    }

    private static Lot lot(String number, int quantity, String place) {
        return new Lot(number, Optional.of(LocalDate.of(2028, 2, 29)), quantity, place, Optional.empty());
    }

    private static List<ShelfChange> to(Item... items) {
        return ShelfChanges.between(NOW, new Shelf(List.of(items)), false);
    }

    @Test
    void theSameShelfChangesNothing() {
        assertEquals(List.of(), to(BALLOON, WIRE));
        assertEquals(List.of(), to(item("balloon", "310.00", lot("A", 3, "cabinet 2"), lot("B", 1, "cabinet 2"))));
    }

    @Test
    void aLotIsToldWithWhatStandsThereNowAndThen() {
        assertEquals(List.of(
                new ShelfChange("balloon", Kind.CHANGED, "lot A", "3, use by 2028-02-29, cabinet 2",
                        "2, use by 2028-02-29, room 1"),
                new ShelfChange("balloon", Kind.ADDED, "lot C", "", "4, use by 2028-02-29, cabinet 2"),
                new ShelfChange("balloon", Kind.REMOVED, "lot B", "1, use by 2028-02-29, cabinet 2", "")),
                to(item("balloon", "310", lot("A", 2, "room 1"), lot("C", 4, "cabinet 2"))));
    }

    @Test
    void figuresOfAnItemAreToldOneByOne() {
        Item other = new Item("wire", Optional.empty(), Optional.of("09506000134352"), WIRE.lots(), 3,
                Optional.of(new BigDecimal("95.5")), "Wire");
        assertEquals(List.of("name", "device", "di", "par level", "price"),
                to(other).stream().map(ShelfChange::what).toList());
    }

    @Test
    void anItemThatTheOtherDoesNotHaveStaysUnlessItIsToBeRemoved() {
        assertEquals(List.of(), to(BALLOON));
        assertEquals(List.of(new ShelfChange("wire", Kind.REMOVED, "", "5 units", "")),
                ShelfChanges.between(NOW, new Shelf(List.of(BALLOON)), true));
        assertEquals(List.of(new ShelfChange("new", Kind.ADDED, "", "", "1 unit")),
                to(item("new", "1", lot("N", 1, ""))));
    }

    @Test
    void boxesWithSerialNumbersAreToldByThem() {
        assertEquals(List.of("lot S, serial 7", "lot without a number, serial 8"),
                to(item("wire", "90", lot("W", 5, "wall"), serial("S", "7"), serial("", "8"))).stream()
                        .map(ShelfChange::what).toList());
    }

    private static Lot serial(String number, String serial) {
        return new Lot(number, Optional.empty(), 1, "wall", Optional.of(serial));
    }

    @Test
    void lotsOfOneNumberInTwoPlacesAreToldApart() {
        Item two = item("balloon", "310", lot("A", 3, "cabinet 2"), lot("A", 1, "room 1"), lot("B", 1, "cabinet 2"));
        List<ShelfChange> changes = to(two);
        assertEquals(List.of("lot A in \"cabinet 2\"", "lot A in \"room 1\"", "lot A"),
                changes.stream().map(ShelfChange::what).toList());
    }
}
