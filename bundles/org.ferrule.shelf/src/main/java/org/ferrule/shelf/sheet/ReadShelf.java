/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.sheet;

import java.util.List;

import org.ferrule.shelf.stock.Shelf;

/**
 * A shelf that was read from a sheet.
 *
 * @param shelf the shelf
 * @param unknownColumns headings that mean nothing here; what stands below them was not read
 */
public record ReadShelf(Shelf shelf, List<String> unknownColumns) {

    /** Copies the list. */
    public ReadShelf {
        unknownColumns = List.copyOf(unknownColumns);
    }
}
