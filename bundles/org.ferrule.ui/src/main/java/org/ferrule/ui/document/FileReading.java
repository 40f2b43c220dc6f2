/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.document;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.ferrule.io.json.JsonDocuments;
import org.ferrule.io.json.ReadResult;

/** A file as it was read for a session, perhaps beforehand and on another thread. */
public final class FileReading {

    private final IFile file;
    private final byte[] content;
    private final ReadResult result;
    private final ContentWriter writer = new ContentWriter();

    private FileReading(IFile file, byte[] content) {
        this.file = file;
        this.content = content;
        result = new JsonDocuments().readUnchecked(content, file.getName());
    }

    /**
     * Reads the file, on any thread.
     *
     * @throws CoreException if the file cannot be read; a broken document can
     */
    public static FileReading of(IFile file) throws CoreException {
        return new FileReading(file, DocumentRecords.bytes(file));
    }

    /**
     * Reads the file, and writes its document once to bytes that go nowhere, for which its first change would have to
     * wait otherwise. For a thread that nobody waits for.
     *
     * @throws CoreException if the file cannot be read; a broken document can
     */
    public static FileReading ahead(IFile file) throws CoreException {
        FileReading reading = of(file);
        reading.result.document().filter(document -> !reading.result.readOnly())
                .ifPresent(document -> reading.result.canonical(() -> reading.writer.write(document)));
        return reading;
    }

    /** Returns the file. */
    public IFile file() {
        return file;
    }

    /** Returns its bytes. */
    byte[] content() {
        return content;
    }

    /** Returns what stands in it. */
    ReadResult result() {
        return result;
    }

    /** Returns what writes its document, and knows it already if that was done ahead. */
    ContentWriter writer() {
        return writer;
    }
}
