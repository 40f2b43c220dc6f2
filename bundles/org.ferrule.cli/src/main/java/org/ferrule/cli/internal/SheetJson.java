/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.util.List;

import org.ferrule.shelf.sheet.ShelfChange;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** What a sheet would change, as JSON. */
public final class SheetJson {
    private SheetJson() {
    }

    /** All changes, and the columns that mean nothing. */
    public static ObjectNode write(List<ShelfChange> changes, List<String> unknownColumns) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        ArrayNode list = node.putArray("changes");
        changes.forEach(change -> list.addObject().put("item", change.item())
                .put("kind", Names.word(change.kind().name())).put("what", text(change.what()))
                .put("was", text(change.was())).put("is", text(change.is())));
        ArrayNode unknown = node.putArray("unknownColumns");
        unknownColumns.forEach(unknown::add);
        return node;
    }

    private static String text(String value) {
        return value.isEmpty() ? null : value;
    }
}
