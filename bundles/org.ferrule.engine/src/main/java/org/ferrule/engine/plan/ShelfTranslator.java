/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.escalation.equipment.Stock;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.ShelfDocument;
import org.ferrule.model.StockItem;
import org.ferrule.shelf.stock.Item;
import org.ferrule.shelf.stock.Lot;
import org.ferrule.shelf.stock.Shelf;

/** Copies a shelf. What cannot be read is not counted as there. */
public final class ShelfTranslator {

    /**
     * A stock with what is wrong about it.
     *
     * @param stock what can be counted on
     * @param problems in the order in which they were found
     */
    public record TranslatedShelf(Stock stock, List<PlanProblem> problems) {
        public TranslatedShelf {
            problems = List.copyOf(problems);
        }
    }

    private final DeviceIds devices;
    private final PlanProblems problems;
    private final Set<String> ids = new HashSet<>();

    private ShelfTranslator(DeviceIds devices, PlanProblems problems) {
        this.devices = devices;
        this.problems = problems;
    }

    /** The stock of a shelf whose items name devices of a catalogue. */
    public static TranslatedShelf translate(ShelfDocument shelf, Catalogue catalogue) {
        PlanProblems problems = new PlanProblems();
        Stock stock = translate(shelf, new DeviceIds(catalogue, problems), problems);
        return new TranslatedShelf(stock, problems.all());
    }

    static Stock translate(ShelfDocument shelf, DeviceIds devices, PlanProblems problems) {
        return new ShelfTranslator(devices, problems).stock(shelf);
    }

    private Stock stock(ShelfDocument document) {
        List<Item> items = new ArrayList<>();
        Map<String, String> equipment = new LinkedHashMap<>();
        for (StockItem written : document.getItems()) {
            if (written.getId() == null || written.getId().isBlank() || !ids.add(written.getId())) {
                problems.add(written, Literals.STOCK_ITEM__ID, "has no id of its own, and is not counted");
            } else {
                add(items, written);
                Optional.ofNullable(written.getEquipment()).ifPresent(word -> equipment.put(written.getId(), word));
            }
        }
        return new Stock(new Shelf(items), equipment);
    }

    /** Two items with one device identifier could not be told apart by it: the second goes without. */
    private void add(List<Item> items, StockItem written) {
        Item item = item(written);
        if (item.di().isPresent() && new Shelf(items).itemOfDi(item.di().get()).isPresent()) {
            problems.add(written, Literals.STOCK_ITEM__CODE, "another item has the device identifier \""
                    + item.di().get() + "\"");
            item = new Item(item.id(), item.device(), Optional.empty(), item.lots(), item.parLevel(), item.price(),
                    item.name());
        }
        items.add(item);
    }

    private Item item(StockItem written) {
        Optional<String> device = Optional.ofNullable(written.getDevice())
                .map(reference -> devices.id(written, Literals.STOCK_ITEM__DEVICE, reference));
        if (written.getParLevel() < 0) {
            problems.add(written, Literals.STOCK_ITEM__PAR_LEVEL, "a par level of less than nothing is none");
        }
        new PlanFigures(problems).optionalAmount(written, Literals.STOCK_ITEM__PRICE);
        Item item = new Item(written.getId(), device, Optional.ofNullable(written.getCode()), List.of(),
                Math.max(0, written.getParLevel()),
                Optional.ofNullable(written.getPrice()).filter(price -> price.signum() >= 0),
                written.getName() == null ? written.getId() : written.getName());
        LotTranslator lots = new LotTranslator(problems);
        for (org.ferrule.model.StockLot lot : written.getLots()) {
            Optional<Lot> read = lots.translate(lot);
            item = read.isPresent() ? with(item, lot, read.get()) : item;
        }
        return item;
    }

    private Item with(Item item, org.ferrule.model.StockLot written, Lot lot) {
        List<Lot> lots = new ArrayList<>(item.lots());
        lots.add(lot);
        try {
            return item.withLots(lots);
        } catch (IllegalArgumentException e) {
            problems.add(written, e.getMessage() + "; this one is not counted");
            return item;
        }
    }
}
