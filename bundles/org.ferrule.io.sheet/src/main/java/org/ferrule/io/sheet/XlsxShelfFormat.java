/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.sheet;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;

import org.ferrule.shelf.sheet.ReadShelf;
import org.ferrule.shelf.sheet.SheetException;
import org.ferrule.shelf.sheet.ShelfFormat;
import org.ferrule.shelf.stock.Shelf;

/** A shelf as the first sheet of an XLSX workbook. */
public final class XlsxShelfFormat implements ShelfFormat {

    @Override
    public String extension() {
        return "xlsx";
    }

    @Override
    public String label() {
        return "XLSX workbook";
    }

    @Override
    public byte[] write(Shelf shelf) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ShelfXlsx.write(shelf, bytes);
        return bytes.toByteArray();
    }

    @Override
    public ReadShelf read(byte[] sheet) throws IOException, SheetException {
        return ShelfXlsx.read(new ByteArrayInputStream(sheet));
    }
}
