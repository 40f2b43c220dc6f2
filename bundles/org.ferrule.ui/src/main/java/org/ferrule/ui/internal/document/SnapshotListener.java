/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.document;

import org.ferrule.ui.document.DocumentSession;

/** Is told, on the display's thread, what a document that is being edited says, shortly after the last of several edits. */
public interface SnapshotListener {

    /** The document is being edited from now on. */
    default void opened(DocumentSession session) {
    }

    /** The document holds changes that are not saved: these are the bytes that saving would write. */
    void unsaved(DocumentSession session, byte[] content);

    /** The document says what its file says. */
    void clean(DocumentSession session);

    /** Nobody edits the document any more; what was not saved is given up. */
    void closed(DocumentSession session);
}
