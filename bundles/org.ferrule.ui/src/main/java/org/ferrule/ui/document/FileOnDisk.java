/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.document;

import java.util.Optional;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.ferrule.io.json.AtomicFiles;
import org.ferrule.ui.internal.document.ContentHash;
import org.ferrule.ui.internal.document.SafeSave;

/** The file of a session as the session knows it: what was read or saved last, and whether another program wrote since. */
final class FileOnDisk {

    private final SafeSave safeSave = new SafeSave(AtomicFiles::write);
    private final IFile file;
    private ContentHash known;
    private boolean conflict;

    FileOnDisk(IFile file) {
        this.file = file;
    }

    IFile file() {
        return file;
    }

    /**
     * Writes the file.
     *
     * @param over whether what another program has written is replaced too
     * @throws SaveConflictException if it is not, and there is such a thing
     * @throws CoreException if the file cannot be written; it is as it was
     */
    void save(byte[] content, boolean over, IProgressMonitor monitor) throws CoreException {
        safeSave.save(file, over ? Optional.empty() : Optional.of(known), content, monitor);
        know(content);
    }

    /** Notes what was read. */
    void know(byte[] content) {
        known = ContentHash.of(content);
        conflict = false;
    }

    /** Returns the SHA-256, in hexadecimal digits, of what was read or saved last. */
    String sha256() {
        return known.sha256();
    }

    boolean exists() {
        return file.exists();
    }

    /** Looks whether the file is what was read or saved last; then there is no conflict any more. */
    boolean isAsKnown() throws CoreException {
        boolean same = file.exists() && ContentHash.of(DocumentRecords.bytes(file)).equals(known);
        conflict = conflict && !same;
        return same;
    }

    /** Tells whether another program has changed or deleted the file while the document was dirty. */
    boolean conflict() {
        return conflict;
    }

    /** Notes whether the other program's work stands against edits. */
    void conflict(boolean exists) {
        conflict = exists;
    }

    /** Lets the next save replace what the other program has written. */
    void accept() throws CoreException {
        if (file.exists()) {
            know(DocumentRecords.bytes(file));
        }
        conflict = false;
    }
}
