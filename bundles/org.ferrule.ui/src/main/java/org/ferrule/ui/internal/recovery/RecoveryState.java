/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.recovery;

import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.ferrule.ui.internal.document.ContentHash;

/** What has become of a file since edits of it were not saved. */
enum RecoveryState {
    /** It says what the edits started from. */
    UNCHANGED("unchanged"),
    /** It says something else. */
    CHANGED("changed since; compare first"),
    /** It says what the edits say: there is nothing to restore. */
    SAVED("saved"),
    /** It is not there; its project is. */
    GONE("gone; restoring writes it again"),
    /** Its project is closed, as one that was made shortly before a crash is at the next start. */
    CLOSED("project closed; restoring opens it"),
    /** Its project is not there. */
    NO_PROJECT("project gone; nothing to restore into");

    private final String words;

    RecoveryState(String words) {
        this.words = words;
    }

    /** Returns what to tell of it. */
    String words() {
        return words;
    }

    /** Tells whether the file can be compared with the edits. */
    boolean comparable() {
        return this == UNCHANGED || this == CHANGED;
    }

    static RecoveryState of(UnsavedEdits edits) {
        IFile file = EditsRestorer.file(edits);
        if (!file.getProject().isOpen()) {
            return file.getProject().exists() ? CLOSED : NO_PROJECT;
        }
        try (InputStream stream = file.getContents(true)) {
            byte[] content = stream.readAllBytes();
            return Arrays.equals(content, edits.content()) ? SAVED
                    : ContentHash.of(content).sha256().equals(edits.base()) ? UNCHANGED : CHANGED;
        } catch (CoreException | IOException e) {
            return GONE;
        }
    }
}
