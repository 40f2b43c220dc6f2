/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.stock;

import static org.ferrule.shelf.stock.Stock.CASE;
import static org.ferrule.shelf.stock.Stock.at;
import static org.ferrule.shelf.stock.Stock.di;
import static org.ferrule.shelf.stock.Stock.item;
import static org.ferrule.shelf.stock.Stock.lot;
import static org.ferrule.shelf.stock.Stock.par;
import static org.ferrule.shelf.stock.Stock.serial;
import static org.ferrule.shelf.stock.Stock.shelf;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

import org.junit.jupiter.api.Test;

class ShelfTest {

    private static void assertRefused(String part, Supplier<?> maker) {
        String message = assertThrows(IllegalArgumentException.class, maker::get).getMessage();
        assertTrue(message.contains(part), message);
    }

    @Test
    void unitsMayBeUsedUpToTheDayOfExpiry() {
        assertTrue(lot("A", "2027-03-15", 1).isUsableOn(CASE));
        assertFalse(lot("A", "2027-03-14", 1).isUsableOn(CASE));
        assertTrue(lot("A", "", 1).isUsableOn(CASE));
    }

    @Test
    void firstExpiredGoesFirstAndWhatHasNoExpiryLast() {
        Item item = item("b", lot("none", "", 1), lot("late", "2028-01-01", 2), lot("gone", "2027-03-14", 4),
                lot("soon", "2027-03-15", 3), lot("also late", "2028-01-01", 5));
        assertEquals(List.of("soon", "late", "also late", "none"),
                item.firstExpiredFirst(CASE).stream().map(Lot::lot).toList());
        assertEquals(11, item.usableOn(CASE));
        assertEquals(15, item.quantity());
    }

    @Test
    void picksNoMoreThanThereIs() {
        Shelf shelf = shelf(item("b", lot("late", "2028-01-01", 2), lot("soon", "2027-04-01", 3)));
        Lot soon = lot("soon", "2027-04-01", 3);
        Lot late = lot("late", "2028-01-01", 2);
        assertEquals(List.of(), shelf.pick("b", CASE, 0));
        assertEquals(List.of(new Pick("b", soon, 2)), shelf.pick("b", CASE, 2));
        assertEquals(List.of(new Pick("b", soon, 3), new Pick("b", late, 1)), shelf.pick("b", CASE, 4));
        assertEquals(List.of(new Pick("b", soon, 3), new Pick("b", late, 2)), shelf.pick("b", CASE, 9));
        assertEquals(List.of(), shelf.pick("c", CASE, 1));
        assertThrows(IllegalArgumentException.class, () -> new Pick("b", late, 3));
        assertThrows(IllegalArgumentException.class, () -> new Pick("b", late, 0));
    }

    @Test
    void belowParAreItemsWithTooFewUsableUnits() {
        Item short2 = par(3, item("b", lot("A", "2027-03-14", 5), lot("B", "2027-04-01", 1)));
        List<BelowPar> below = shelf(short2, par(1, item("c", lot("A", "", 1))), item("d")).belowPar(CASE);
        assertEquals(List.of(new BelowPar(short2, 1)), below);
        assertEquals(2, below.get(0).missing());
    }

    @Test
    void findsItemsByIdAndByDeviceIdentifier() {
        Shelf shelf = shelf(di("6291041500213", item("b")), di("A123BJC5D6E71", item("c")), item("d"));
        assertEquals("c", shelf.item("c").orElseThrow().id());
        assertEquals(Optional.empty(), shelf.item("x"));
        assertEquals("b", shelf.itemOfDi("06291041500213").orElseThrow().id());
        assertEquals("c", shelf.itemOfDi("A123BJC5D6E71").orElseThrow().id());
        assertEquals(Optional.empty(), shelf.itemOfDi("0A123BJC5D6E71"));
        assertEquals(Optional.empty(), shelf.itemOfDi(""));
    }

    @Test
    void refusesWhatContradictsItself() {
        assertRefused("\"A\"", () -> lot("A", "", 0));
        assertRefused("serial number \"7\"", () -> new Lot("A", Optional.empty(), 2, "", Optional.of("7")));
        assertRefused("\" \"", () -> item(" "));
        assertRefused("par level -1", () -> par(-1, item("b")));
        assertRefused("price -0.01", () -> new Item("b", Optional.empty(), Optional.empty(), List.of(), 0,
                Optional.of(new BigDecimal("-0.01")), ""));
        assertRefused("twice lot \"A\" at \"up\"",
                () -> item("b", at("up", lot("A", "", 1)), at("up", lot("A", "", 2))));
        assertRefused("2027-01-01 and none", () -> item("b", lot("A", "", 1), at("up", lot("A", "2027-01-01", 1))));
        assertRefused("\"b\"", () -> shelf(item("b"), item("b")));
        assertRefused("6291041500213", () -> shelf(di("06291041500213", item("b")), di("6291041500213", item("c"))));
        assertRefused("\"B\"", () -> Stock.use("b", "B", 0));
    }

    @Test
    void takesWhatIsFreeOfChargeAndUnknownLotsOfSeveralDates() {
        assertEquals(2, item("b", lot("", "2027-01-01", 1), at("up", lot("", "2028-01-01", 1))).quantity());
        assertEquals(2, item("b", serial("1", lot("A", "", 1)), serial("2", lot("A", "", 1))).quantity());
        assertEquals(LocalDate.of(2027, 1, 1), lot("A", "2027-01-01", 1).withQuantity(3).expiry().orElseThrow());
        assertEquals(BigDecimal.ZERO, new Item("b", Optional.empty(), Optional.empty(), List.of(), 0,
                Optional.of(BigDecimal.ZERO), "").price().orElseThrow());
    }
}
