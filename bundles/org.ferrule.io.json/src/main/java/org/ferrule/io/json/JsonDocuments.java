/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.json;

import java.io.IOException;
import java.io.InputStream;

import org.ferrule.model.Document;

/** Reads and writes documents. Has no state; instances may be shared between threads. */
public final class JsonDocuments {

    /**
     * Reads a document. Never throws for what the bytes are: whatever is wrong with them is in the result.
     *
     * @param bytes the whole file, UTF-8; a byte order mark is passed over
     * @param fileName the file's name, or its path, which should end for the format; empty if there is none
     */
    public ReadResult read(byte[] bytes, String fileName) {
        return new DocumentReader(bytes, fileName).read(true);
    }

    /**
     * Reads a document without checking what it says: its problems are those of its form alone, and the places in the
     * text are not kept. Much quicker and smaller for large documents whose content somebody else checks.
     *
     * @see #read(byte[], String)
     */
    public ReadResult readUnchecked(byte[] bytes, String fileName) {
        return new DocumentReader(bytes, fileName).read(false);
    }

    /**
     * Reads a document from a stream, which stays open.
     *
     * @throws IOException if the stream fails
     */
    public ReadResult read(InputStream stream, String fileName) throws IOException {
        return read(stream.readAllBytes(), fileName);
    }

    /**
     * Returns the document as bytes: UTF-8 in the canonical layout, the same for the same document.
     *
     * @throws IllegalArgumentException if an unknown key holds no JSON, or has the name of another key of its object
     */
    public byte[] write(Document document) {
        return DocumentWriter.write(document);
    }
}
