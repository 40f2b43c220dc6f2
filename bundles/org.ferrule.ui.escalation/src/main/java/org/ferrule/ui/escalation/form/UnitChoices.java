/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.ui.escalation.form;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.model.LoggedAttempt;
import org.ferrule.model.Move;
import org.ferrule.model.ShelfDocument;
import org.ferrule.model.StockItem;
import org.ferrule.model.TechniqueLibrary;
import org.ferrule.model.UsedUnit;
import org.ferrule.ui.escalation.live.LivePlan;

/** What a box that was opened can be: the items and lots of the shelf, and the roles of the step it was opened for. */
final class UnitChoices {

    private final LivePlan live;

    UnitChoices(LivePlan live) {
        this.live = live;
    }

    private List<StockItem> stock() {
        Optional<ShelfDocument> shelf = live.file().flatMap(live.documents()::shelf);
        return shelf.map(ShelfDocument::getItems).map(List::copyOf).orElse(List.of());
    }

    /** Returns the names of all items of the shelf, by their ids. */
    Map<String, String> items() {
        Map<String, String> names = new LinkedHashMap<>();
        stock().stream().filter(item -> item.getId() != null)
                .forEach(item -> names.put(item.getId(), item.getName() == null ? item.getId() : item.getName()));
        return names;
    }

    /** Returns the name of the item of a box; its id where the shelf does not have it. */
    String item(UsedUnit unit) {
        return unit.getItem() == null ? "" : items().getOrDefault(unit.getItem(), unit.getItem());
    }

    /** Returns the lots of the item of a box. */
    Map<String, String> lots(UsedUnit unit) {
        Map<String, String> lots = new LinkedHashMap<>();
        stock().stream().filter(item -> item.getId() != null && item.getId().equals(unit.getItem()))
                .flatMap(item -> item.getLots().stream()).filter(lot -> lot.getLot() != null)
                .forEach(lot -> lots.put(lot.getLot(),
                        lot.getExpiry() == null ? lot.getLot() : lot.getLot() + ", use by " + lot.getExpiry()));
        return lots;
    }

    /** Returns the names of the roles of the step that a box was opened for, by their ids. */
    Map<String, String> roles(UsedUnit unit) {
        return unit.eContainer() instanceof LoggedAttempt attempt ? roles(attempt) : Map.of();
    }

    /** Returns the names of the roles of the step of an entry, by their ids. */
    Map<String, String> roles(LoggedAttempt attempt) {
        Map<String, String> roles = new LinkedHashMap<>();
        find(attempt).stream().flatMap(move -> move.getRoles().stream()).filter(role -> role.getId() != null)
                .forEach(role -> roles.put(role.getId(), role.getName() == null ? role.getId() : role.getName()));
        return roles;
    }

    /** Returns the name of the step of an entry. */
    String move(LoggedAttempt attempt) {
        String id = attempt.getMove() == null ? "" : attempt.getMove();
        return find(attempt).map(Move::getName).orElse(id);
    }

    private Optional<Move> find(LoggedAttempt attempt) {
        Optional<TechniqueLibrary> library = live.file().flatMap(live.documents()::techniques);
        return library.stream().flatMap(UnitChoices::moves)
                .filter(move -> move.getId() != null && move.getId().equals(attempt.getMove())).findFirst();
    }

    private static Stream<Move> moves(TechniqueLibrary library) {
        return Stream.concat(library.getSetups().stream(), library.getTechniques().stream());
    }
}
