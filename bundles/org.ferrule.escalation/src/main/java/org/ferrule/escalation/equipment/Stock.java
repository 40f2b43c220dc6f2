/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.equipment;

import java.util.List;
import java.util.Map;
import java.util.Objects;

import org.ferrule.shelf.stock.Item;
import org.ferrule.shelf.stock.Shelf;

/**
 * The shelf as a plan sees it. The items' devices are ids of the libraries.
 *
 * @param shelf what is there
 * @param equipment what an item is that is no device, as a console: item id to that word
 */
public record Stock(Shelf shelf, Map<String, String> equipment) {
    public Stock {
        Objects.requireNonNull(shelf, "shelf");
        equipment = Map.copyOf(equipment);
    }

    /** The items of a device, in the order of the shelf. */
    public List<Item> ofDevice(String device) {
        return shelf.items().stream().filter(item -> item.device().filter(device::equals).isPresent()).toList();
    }

    /** The items that are such equipment, in the order of the shelf. */
    public List<Item> ofEquipment(String word) {
        return shelf.items().stream().filter(item -> word.equals(equipment.get(item.id()))).toList();
    }

    /** The same with another shelf. */
    public Stock with(Shelf other) {
        return new Stock(other, equipment);
    }
}
