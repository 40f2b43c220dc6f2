/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.document;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.ferrule.io.json.JsonDocuments;
import org.ferrule.io.json.ReadResult;

/**
 * A file as it was read for a session, perhaps beforehand and on another thread.
 *
 * @param file the file
 * @param content its bytes
 * @param result what stands in it
 */
public record FileReading(IFile file, byte[] content, ReadResult result) {

    /**
     * Reads the file, on any thread.
     *
     * @throws CoreException if the file cannot be read; a broken document can
     */
    public static FileReading of(IFile file) throws CoreException {
        byte[] content = DocumentRecords.bytes(file);
        return new FileReading(file, content, new JsonDocuments().readUnchecked(content, file.getName()));
    }
}
