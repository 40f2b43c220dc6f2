/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.sheet;

import java.nio.charset.StandardCharsets;

import org.ferrule.shelf.sheet.ReadShelf;
import org.ferrule.shelf.sheet.SheetException;
import org.ferrule.shelf.sheet.ShelfFormat;
import org.ferrule.shelf.stock.Shelf;

/** A shelf as CSV in UTF-8. */
public final class CsvShelfFormat implements ShelfFormat {

    @Override
    public String extension() {
        return "csv";
    }

    @Override
    public String label() {
        return "CSV";
    }

    @Override
    public byte[] write(Shelf shelf) {
        return ShelfCsv.write(shelf).getBytes(StandardCharsets.UTF_8);
    }

    @Override
    public ReadShelf read(byte[] sheet) throws SheetException {
        return ShelfCsv.read(new String(sheet, StandardCharsets.UTF_8));
    }
}
