/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture;

import java.io.IOException;

/**
 * A format in which a single picture leaves the program. Exporters make bytes and open no files, so that whoever calls
 * them can write atomically. They have no state and may be called from any thread.
 */
public interface PictureExporter {

    /** The file name extension that stands for the format, in lower case and without a dot. */
    String extension();

    /** What the format is called, for people. */
    String label();

    /**
     * Exports a picture in its own size.
     *
     * @param info what is to be known about it; a format keeps what it has room for
     * @return the whole content of the file; the same picture and information give the same bytes
     * @throws IOException if the format's writer fails
     * @throws IllegalArgumentException if the format cannot hold something of the picture; the message names it
     */
    byte[] export(Picture picture, DocumentInfo info) throws IOException;
}
