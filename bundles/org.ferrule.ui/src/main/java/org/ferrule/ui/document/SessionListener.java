/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.document;

/** Is told, on the display's thread, what happens to a document that is being edited. */
public interface SessionListener {

    /** The document has changed; told once for a command, not once for each of its parts. */
    default void documentChanged(DocumentChange change) {
    }

    /** Dirty state, readability, or what may be undone has changed. */
    default void stateChanged() {
    }

    /** The document is about to be saved: what is typed and can be read should become part of it now. */
    default void aboutToSave() {
    }

    /** The problems of the document as it stands were found anew. */
    default void problemsChanged() {
    }
}
