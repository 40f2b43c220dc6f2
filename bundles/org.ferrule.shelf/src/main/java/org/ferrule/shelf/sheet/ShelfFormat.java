/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.sheet;

import java.io.IOException;

import org.ferrule.shelf.stock.Shelf;

/**
 * A format in which a shelf leaves the program and comes back. Formats make and take bytes and open no files. A plug-in
 * adds its own through the extension point for formats of shelves.
 */
public interface ShelfFormat {

    /** The file name extension that stands for the format, in lower case and without a dot. */
    String extension();

    /** What the format is called, for people. */
    String label();

    /**
     * Writes a shelf.
     *
     * @throws IOException when the format's writer fails
     */
    byte[] write(Shelf shelf) throws IOException;

    /**
     * Reads a shelf.
     *
     * @param sheet the whole file
     * @throws IOException if the bytes cannot be read at all
     * @throws SheetException naming rows and columns that cannot be read
     */
    ReadShelf read(byte[] sheet) throws IOException, SheetException;
}
