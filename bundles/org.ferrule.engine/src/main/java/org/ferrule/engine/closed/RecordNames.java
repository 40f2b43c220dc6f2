/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.closed;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.ferrule.engine.catalogue.CataloguedDevice;
import org.ferrule.engine.catalogue.LibraryReader;
import org.ferrule.model.Move;
import org.ferrule.model.ShelfDocument;
import org.ferrule.model.StockItem;
import org.ferrule.model.TechniqueLibrary;

/**
 * What the documents of today call that which a record names by id. A record can be read without them: what they do not
 * know goes by its id. Immutable.
 */
public final class RecordNames {
    private final Map<String, String> devices = new HashMap<>();
    private final Map<String, String> moves = new HashMap<>();
    private final Map<String, String> items = new HashMap<>();
    private final Set<String> setups = new HashSet<>();
    private final String currency;

    /**
     * Takes the names. To be used where the model may be read.
     *
     * @param libraries those that are there
     */
    public RecordNames(List<LibraryReader> libraries, Optional<TechniqueLibrary> techniques,
            Optional<ShelfDocument> shelf) {
        libraries.stream().flatMap(library -> library.devices().stream()).forEach(this::add);
        techniques.ifPresent(this::add);
        shelf.ifPresent(document -> document.getItems().forEach(this::add));
        currency = shelf.map(ShelfDocument::getCurrency).map(String::strip).orElse("");
    }

    private void add(CataloguedDevice device) {
        put(devices, device.device().id(), device.device().name());
        put(devices, device.library() + "!" + device.device().id(), device.device().name());
    }

    private void add(TechniqueLibrary library) {
        library.getSetups().forEach(setup -> setups.add(setup.getId()));
        library.getSetups().forEach(this::add);
        library.getTechniques().forEach(this::add);
    }

    private void add(Move move) {
        put(moves, move.getId(), move.getName());
    }

    private void add(StockItem item) {
        put(items, item.getId(), item.getName());
        if (item.getDevice() != null) {
            put(items, item.getId(), device(item.getDevice()));
        }
    }

    private static void put(Map<String, String> names, String id, String name) {
        if (id != null && name != null && !name.isBlank()) {
            names.putIfAbsent(id, name.strip());
        }
    }

    /** A device. */
    public String device(String id) {
        return devices.getOrDefault(id, id);
    }

    /** An item of the shelf. */
    public String item(String id) {
        return items.getOrDefault(id, device(id));
    }

    /** A technique or a set-up. */
    public String move(String id) {
        return moves.getOrDefault(id, id);
    }

    /** Whether it is known to be a set-up, which is in place when it succeeded. */
    boolean isSetup(String id) {
        return setups.contains(id);
    }

    /** The currency of the shelf; empty where none is stated. */
    String currency() {
        return currency;
    }
}
