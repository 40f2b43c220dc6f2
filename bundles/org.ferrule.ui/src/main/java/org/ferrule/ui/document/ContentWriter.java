/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.document;

import org.ferrule.io.json.RepeatedWriter;
import org.ferrule.model.Document;

/** Writes a document that was read for a session again and again; what no change concerns is not written anew. */
final class ContentWriter {

    private RepeatedWriter writer;

    /** Returns the bytes of the document, which is always the same. */
    byte[] write(Document document) {
        if (writer == null) {
            writer = new RepeatedWriter(document);
        }
        return writer.write();
    }

    /** Notes a change of the document. */
    void changed(DocumentChange change) {
        if (writer != null) {
            change.objects().forEach(writer::changed);
        }
    }
}
