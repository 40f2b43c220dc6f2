/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.sheet;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import org.ferrule.shelf.sheet.ShelfChange.Kind;
import org.ferrule.shelf.stock.Item;
import org.ferrule.shelf.stock.Lot;
import org.ferrule.shelf.stock.Shelf;

/** What another shelf would change: item by item, and within an item lot by lot. */
public final class ShelfChanges {
    private final List<ShelfChange> changes = new ArrayList<>();

    private ShelfChanges() {
    }

    /**
     * All changes from one shelf to another, in the order of the other one; what would be removed comes last.
     *
     * @param removing whether items that the other shelf does not have are removed, and not left as they are
     */
    public static List<ShelfChange> between(Shelf now, Shelf then, boolean removing) {
        ShelfChanges found = new ShelfChanges();
        then.items().forEach(item -> now.item(item.id()).ifPresentOrElse(known -> found.compare(known, item),
                () -> found.added(item)));
        if (removing) {
            now.items().stream().filter(item -> then.item(item.id()).isEmpty()).forEach(item -> found.changes
                    .add(new ShelfChange(item.id(), Kind.REMOVED, "", units(item), "")));
        }
        return List.copyOf(found.changes);
    }

    private static String units(Item item) {
        return item.quantity() + (item.quantity() == 1 ? " unit" : " units");
    }

    private void added(Item item) {
        changes.add(new ShelfChange(item.id(), Kind.ADDED, "", "", units(item)));
    }

    private void compare(Item now, Item then) {
        value(now.id(), "name", now.name(), then.name());
        value(now.id(), "device", now.device().orElse(""), then.device().orElse(""));
        value(now.id(), "di", now.di().orElse(""), then.di().orElse(""));
        value(now.id(), "par level", Integer.toString(now.parLevel()), Integer.toString(then.parLevel()));
        value(now.id(), "price", price(now.price()), price(then.price()));
        Map<String, Lot> before = lots(now);
        Map<String, Lot> after = lots(then);
        after.forEach((key, lot) -> lot(now.id(), key, Optional.ofNullable(before.get(key)), Optional.of(lot)));
        before.forEach((key, lot) -> {
            if (!after.containsKey(key)) {
                lot(now.id(), key, Optional.of(lot), Optional.empty());
            }
        });
    }

    /** A price of 310 is one of 310.00. */
    private static String price(Optional<BigDecimal> price) {
        return price.map(p -> p.stripTrailingZeros().toPlainString()).orElse("");
    }

    private void value(String item, String what, String was, String is) {
        if (!was.equals(is)) {
            changes.add(new ShelfChange(item, Kind.CHANGED, what, was, is));
        }
    }

    private void lot(String item, String key, Optional<Lot> now, Optional<Lot> then) {
        String was = now.map(ShelfChanges::units).orElse("");
        String is = then.map(ShelfChanges::units).orElse("");
        Kind kind = now.isEmpty() ? Kind.ADDED : then.isEmpty() ? Kind.REMOVED : Kind.CHANGED;
        if (!was.equals(is)) {
            changes.add(new ShelfChange(item, kind, key, was, is));
        }
    }

    private static String units(Lot lot) {
        String expiry = lot.expiry().map(LocalDate::toString).map(day -> ", use by " + day).orElse("");
        String place = lot.location().isEmpty() ? "" : ", " + lot.location();
        return lot.quantity() + expiry + place;
    }

    /** Lots by what stands on their boxes; of two with the same, by their place too. */
    private static Map<String, Lot> lots(Item item) {
        Map<String, List<Lot>> named = item.lots().stream().collect(
                Collectors.groupingBy(ShelfChanges::key, LinkedHashMap::new, Collectors.toList()));
        Map<String, Lot> lots = new LinkedHashMap<>();
        named.forEach((key, same) -> same.forEach(
                lot -> lots.put(same.size() == 1 ? key : key + " in \"" + lot.location() + "\"", lot)));
        return lots;
    }

    private static String key(Lot lot) {
        String number = lot.lot().isEmpty() ? "lot without a number" : "lot " + lot.lot();
        return lot.serial().map(serial -> number + ", serial " + serial).orElse(number);
    }
}
