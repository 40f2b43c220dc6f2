/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.engine.plan.ShelfTranslator.TranslatedShelf;
import org.ferrule.escalation.equipment.Stock;
import org.ferrule.model.ModelFactory;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.ShelfDocument;
import org.ferrule.model.StockItem;
import org.ferrule.shelf.stock.Item;
import org.ferrule.shelf.stock.Shelf;

/** A shelf document as a sheet tells it, and a sheet taken over into the document; devices are named as they are written. */
public final class ShelfSheets {
    private ShelfSheets() {
    }

    /** The shelf of a document, with what cannot be read of it. */
    public static TranslatedShelf of(ShelfDocument document) {
        TranslatedShelf translated = ShelfTranslator.translate(document, Catalogue.of(List.of()));
        List<Item> items = translated.stock().shelf().items().stream().map(item -> written(document, item)).toList();
        return new TranslatedShelf(
                new Stock(new Shelf(items), translated.stock().equipment()),
                translated.problems().stream().filter(
                        problem -> !problem.feature().equals(Literals.STOCK_ITEM__DEVICE.getName())).toList());
    }

    private static Item written(ShelfDocument document, Item item) {
        Optional<String> device = find(document, item.id()).map(StockItem::getDevice);
        return new Item(item.id(), device, item.di(), item.lots(), item.parLevel(), item.price(), item.name());
    }

    private static Optional<StockItem> find(ShelfDocument document, String id) {
        return document.getItems().stream().filter(item -> id.equals(item.getId())).findFirst();
    }

    /**
     * Takes a sheet over. What a sheet does not tell, such as sources and equipment, stays.
     *
     * @param document is changed
     * @param removing whether items that the sheet does not have are removed, and not left as they are
     */
    public static void take(ShelfDocument document, Shelf sheet, boolean removing) {
        for (Item item : sheet.items()) {
            StockItem known = find(document, item.id()).orElseGet(() -> added(document, item.id()));
            set(known, item);
            new LotTaking(known).take(item.lots());
        }
        if (removing) {
            Set<String> told = sheet.items().stream().map(Item::id).collect(Collectors.toSet());
            document.getItems().removeAll(new ArrayList<>(document.getItems().stream()
                    .filter(item -> item.getId() != null && !told.contains(item.getId())).toList()));
        }
    }

    private static StockItem added(ShelfDocument document, String id) {
        StockItem item = ModelFactory.eINSTANCE.createStockItem();
        item.setId(id);
        document.getItems().add(item);
        return item;
    }

    private static void set(StockItem known, Item item) {
        String name = known.getName() == null ? item.id() : known.getName();
        if (!name.equals(item.name())) {
            known.setName(item.name().isEmpty() ? null : item.name());
        }
        if (!Optional.ofNullable(known.getDevice()).equals(item.device())) {
            known.setDevice(item.device().orElse(null));
        }
        if (!Optional.ofNullable(known.getCode()).equals(item.di())) {
            known.setCode(item.di().orElse(null));
        }
        if (Math.max(0, known.getParLevel()) != item.parLevel()) {
            known.setParLevel(item.parLevel());
        }
        boolean samePrice = known.getPrice() == null ? item.price().isEmpty()
                : item.price().filter(price -> price.compareTo(known.getPrice()) == 0).isPresent();
        if (!samePrice) {
            known.setPrice(item.price().orElse(null));
        }
    }
}
