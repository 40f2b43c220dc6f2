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
import java.util.Set;

import org.ferrule.shelf.stock.Item;
import org.ferrule.shelf.stock.Lot;
import org.ferrule.shelf.stock.Shelf;
import org.junit.jupiter.api.Test;

/** What a sheet has no column for is not known, and stays. */
class ReadShelfTest {
    private static final Optional<LocalDate> EXPIRY = Optional.of(LocalDate.of(2028, 2, 29));
    private static final Item KNOWN = new Item("balloon", Optional.of("device"), Optional.of("09506000134352"),
            List.of(new Lot("A", EXPIRY, 3, "cabinet 2", Optional.empty())), 2, Optional.of(new BigDecimal("310")),
            "Balloon");
    private static final Shelf NOW = new Shelf(List.of(KNOWN));

    private static Item told(Lot... lots) {
        return new Item("balloon", Optional.empty(), Optional.empty(), List.of(lots), 0, Optional.empty(), "");
    }

    private static Item over(Item told, String... columns) {
        return new ReadShelf(new Shelf(List.of(told)), Set.of(columns), List.of()).over(NOW).items().get(0);
    }

    @Test
    void aSheetThatOnlyNamesItemsChangesNothing() {
        assertEquals(KNOWN, over(told(), "item"));
    }

    @Test
    void countsOfLotsKeepPlaceAndExpiry() {
        Item counted = over(told(new Lot("A", Optional.empty(), 5, "", Optional.empty())), "item", "lot", "quantity");
        assertEquals(List.of(new Lot("A", EXPIRY, 5, "cabinet 2", Optional.empty())), counted.lots());
        assertEquals(KNOWN.price(), counted.price());
    }

    @Test
    void anEmptyCellOfAColumnThatIsThereClears() {
        Item cleared = over(told(), "item", "price", "name", "device", "di", "par level");
        assertEquals(Optional.empty(), cleared.price());
        assertEquals(Optional.empty(), cleared.device());
        assertEquals(0, cleared.parLevel());
        assertEquals(KNOWN.lots(), cleared.lots());
    }

    @Test
    void boxesOfOneLotAreToldApartByTheirSerialNumbers() {
        Lot seven = box("7", "cabinet 1");
        Lot eight = box("8", "cabinet 2");
        Shelf now = new Shelf(List.of(told(seven, eight)));
        Set<String> columns = Set.of("item", "lot", "serial", "quantity");
        Shelf told = new Shelf(List.of(told(box("8", ""), box("9", ""))));
        assertEquals(List.of(eight, box("9", "")),
                new ReadShelf(told, columns, List.of()).over(now).items().get(0).lots());
    }

    private static Lot box(String serial, String place) {
        return new Lot("A", Optional.empty(), 1, place, Optional.of(serial));
    }

    @Test
    void aLotKeepsItsSerialNumberWhereTheSheetHasNoneToTell() {
        Lot seven = box("7", "cabinet 1");
        Shelf told = new Shelf(List.of(told(new Lot("A", Optional.empty(), 1, "room 1", Optional.empty()))));
        assertEquals(List.of(box("7", "room 1")), new ReadShelf(told, Set.of("item", "lot", "quantity", "location"),
                List.of()).over(new Shelf(List.of(told(seven)))).items().get(0).lots());
    }

    @Test
    void aLotOfAnotherNumberIsAnotherLot() {
        Lot other = new Lot("B", Optional.empty(), 5, "", Optional.empty());
        assertEquals(List.of(other), over(told(other), "item", "lot", "quantity").lots());
    }

    @Test
    void whatIsNotOnTheShelfComesAsItIsTold() {
        Item fresh = new Item("wire", Optional.empty(), Optional.empty(), List.of(), 0, Optional.empty(), "Wire");
        assertEquals(fresh, over(fresh, "item", "name"));
    }
}
