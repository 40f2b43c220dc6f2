/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.problem;

import java.util.Optional;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.ferrule.ui.document.DocumentFiles;
import org.ferrule.ui.document.DocumentRecord;
import org.ferrule.ui.document.DocumentRecords;

/**
 * A document to be looked at, with the way to the documents that it refers to.
 *
 * @param record the document; must not be changed
 * @param records all documents, as they stand now
 */
public record ProblemRequest(DocumentRecord record, DocumentRecords records) {

    /**
     * Returns the document that a reference leads to, in its unsaved state where it is being edited.
     *
     * @return nothing if there is no such file
     * @throws CoreException if the file cannot be read
     */
    public Optional<DocumentRecord> referenced(String reference) throws CoreException {
        Optional<IFile> file = DocumentFiles.resolve(record.file(), reference).filter(IFile::exists);
        return file.isPresent() ? Optional.of(records.of(file.get())) : Optional.empty();
    }
}
