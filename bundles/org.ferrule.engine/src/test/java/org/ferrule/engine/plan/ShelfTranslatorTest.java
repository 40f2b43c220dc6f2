/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.plan;

import static org.ferrule.engine.plan.PlanDocuments.places;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.ferrule.engine.plan.ShelfTranslator.TranslatedShelf;
import org.ferrule.escalation.equipment.Stock;
import org.ferrule.shelf.stock.Item;
import org.ferrule.shelf.stock.Lot;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShelfTranslatorTest {
    private static final LocalDate DAY = LocalDate.of(2026, 4, 2);

    private static TranslatedShelf shelf(String keys) {
        return ShelfTranslator.translate(PlanDocuments.shelf(keys).orElseThrow(),
                PlanDocuments.catalogue(PlanDocuments.DEVICES));
    }

    @Test
    void copiesItemsAndLots() {
        TranslatedShelf translated = shelf(PlanDocuments.SHELF);
        assertEquals(List.of(), translated.problems());
        Stock stock = translated.stock();
        Item small = stock.ofDevice("b-15").get(0);
        assertEquals(List.of(new Lot("A", Optional.of(LocalDate.of(2027, 2, 28)), 3, "B", Optional.empty())),
                small.lots());
        assertEquals(Optional.of(new BigDecimal("310.00")), small.price());
        assertEquals(Optional.of("29500000000109"), small.di());
        assertEquals(2, small.parLevel());
        assertEquals(List.of("console"), stock.ofEquipment("laser generator").stream().map(Item::id).toList());
    }

    /** What cannot be read is told, and never counted as there. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            '2027-02-28'            | '2027-02-30'                | 0 | items[small]/lots[0] expiry
            'quantity':3            | 'quantity':0                | 0 | items[small]/lots[0] quantity
            'quantity':3            | 'quantity':-3               | 0 | items[small]/lots[0] quantity
            'quantity':3            | 'quantity':3,'serial':'7'   | 0 | items[small]/lots[0] quantity
            'id':'small'            | 'id':''                     | 0 | items[0] id
            'location':'B'}         | 'location':'B'},{'lot':'A','quantity':1,'location':'B'} | 3 | items[small]/lots[1]
            'parLevel':2            | 'parLevel':-2               | 3 | items[small] parLevel
            'price':310.00          | 'price':-310.00             | 3 | items[small] price
            """)
    void neverCountsWhatCannotBeRead(String found, String instead, int usable, String place) {
        assertTrue(PlanDocuments.SHELF.contains(found));
        TranslatedShelf translated = shelf(PlanDocuments.SHELF.replace(found, instead));
        assertEquals(List.of("SHELF " + place), places(translated.problems()));
        assertEquals(usable, translated.stock().ofDevice("b-15").stream().mapToInt(i -> i.usableOn(DAY)).sum());
    }

    @Test
    void keepsAnItemOfADeviceThatNoLibraryHas() {
        TranslatedShelf translated = shelf(PlanDocuments.SHELF.replace("'b-15'", "'b-16'"));
        assertEquals(List.of("SHELF items[small] device"), places(translated.problems()));
        assertEquals(1, translated.stock().ofDevice("b-16").size());
    }

    @Test
    void leavesTheSecondItemOfOneDeviceIdentifierWithoutIt() {
        TranslatedShelf translated = shelf(PlanDocuments.SHELF.replace("'equipment'",
                "'code':'29500000000109','equipment'"));
        assertEquals(List.of("SHELF items[console] code"), places(translated.problems()));
        assertEquals(Optional.of("small"), translated.stock().shelf().itemOfDi("29500000000109").map(Item::id));
    }
}
