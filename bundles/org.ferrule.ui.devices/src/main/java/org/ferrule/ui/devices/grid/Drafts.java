/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.grid;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

import org.ferrule.ui.devices.sheet.SheetColumn;
import org.ferrule.ui.devices.sheet.SheetRow;

/** Texts that were typed into cells and cannot be read: kept until they are put right or given up. */
final class Drafts {

    private record Key(SheetRow row, SheetColumn column) {
    }

    private final Map<Key, String> texts = new HashMap<>();

    void put(SheetRow row, SheetColumn column, String text) {
        texts.put(new Key(row, column), text);
    }

    Optional<String> get(SheetRow row, SheetColumn column) {
        return texts.isEmpty() ? Optional.empty() : Optional.ofNullable(texts.get(new Key(row, column)));
    }

    void drop(SheetRow row, SheetColumn column) {
        texts.remove(new Key(row, column));
    }

    int size() {
        return texts.size();
    }

    void clear() {
        texts.clear();
    }
}
