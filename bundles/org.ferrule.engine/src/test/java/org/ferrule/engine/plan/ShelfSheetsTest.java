/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.ferrule.model.ShelfDocument;
import org.ferrule.model.StockItem;
import org.ferrule.model.StockLot;
import org.ferrule.shelf.stock.Item;
import org.ferrule.shelf.stock.Lot;
import org.ferrule.shelf.stock.Shelf;
import org.junit.jupiter.api.Test;

class ShelfSheetsTest {
    private final ShelfDocument document = PlanDocuments.shelf(PlanDocuments.SHELF).orElseThrow();

    private Shelf shelf() {
        return ShelfSheets.of(document).stock().shelf();
    }

    private StockItem item(String id) {
        return document.getItems().stream().filter(item -> item.getId().equals(id)).findFirst().orElseThrow();
    }

    @Test
    void devicesAreNamedAsTheyAreWritten() {
        assertEquals(List.of(), ShelfSheets.of(document).problems());
        assertEquals(Optional.of("b-15"), shelf().item("small").orElseThrow().device());
    }

    @Test
    void whatWasWrittenChangesNothing() {
        ShelfDocument before = EcoreUtil.copy(document);
        ShelfSheets.take(document, shelf(), true);
        assertTrue(EcoreUtil.equals(before, document));
    }

    @Test
    void aLotThatIsThereStaysAndKeepsWhatNoSheetTells() {
        StockLot lot = item("small").getLots().get(0);
        Item told = new Item("small", Optional.of("b-15"), Optional.of("29500000000109"),
                List.of(new Lot("A", Optional.of(LocalDate.of(2027, 2, 28)), 2, "C", Optional.empty()),
                        new Lot("Z", Optional.empty(), 4, "", Optional.empty())),
                3, Optional.of(new BigDecimal("310")), "small");
        ShelfSheets.take(document, new Shelf(List.of(told)), false);
        assertSame(lot, item("small").getLots().get(0));
        assertEquals(2, lot.getQuantity());
        assertEquals("C", lot.getLocation());
        assertEquals(List.of("A", "Z"), item("small").getLots().stream().map(StockLot::getLot).toList());
        assertEquals(3, item("small").getParLevel());
        assertEquals(new BigDecimal("310.00"), item("small").getPrice());
        assertEquals("laser generator", item("console").getEquipment());
    }

    @Test
    void itemsThatASheetDoesNotHaveGoOnlyWhereThatIsWanted() {
        Shelf few = new Shelf(List.of(shelf().item("x").orElseThrow()));
        ShelfSheets.take(document, few, false);
        assertEquals(3, document.getItems().size());
        ShelfSheets.take(document, few, true);
        assertEquals(List.of("x"), document.getItems().stream().map(StockItem::getId).toList());
    }

    @Test
    void anItemThatIsNewComesWithAllThatIsTold() {
        Item told = new Item("new", Optional.empty(), Optional.empty(),
                List.of(new Lot("", Optional.empty(), 1, "room 1", Optional.of("S-7"))), 0, Optional.empty(), "Pump");
        ShelfSheets.take(document, new Shelf(List.of(told)), false);
        assertEquals(Optional.of(told), shelf().item("new"));
        assertEquals("Pump", item("new").getName());
        assertEquals("S-7", item("new").getLots().get(0).getSerial());
    }
}
