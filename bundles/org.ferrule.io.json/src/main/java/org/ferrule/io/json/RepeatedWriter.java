/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.json;

import java.io.IOException;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.ferrule.model.Document;

/**
 * Writes one document again and again while it is being edited. What stands in the lists of the document, such as each
 * device of a library, is remembered as it was written last, and written anew only after it was told that it has changed.
 * For one thread, the one that may read the document.
 */
public final class RepeatedWriter {

    private final Document document;
    private Map<EObject, String> known = new IdentityHashMap<>();

    /** Creates a writer of a document that knows nothing yet. */
    public RepeatedWriter(Document document) {
        this.document = document;
    }

    /** Returns the document that it writes. */
    public Document document() {
        return document;
    }

    /** Notes that an object has changed, or has been put into the document or moved in it. */
    public void changed(EObject object) {
        EObject part = object;
        while (part != null && part != document) {
            known.remove(part);
            part = part.eContainer();
        }
    }

    /**
     * Returns the bytes that {@link JsonDocuments#write} returns, if everything that has changed was told.
     *
     * @throws IllegalArgumentException as {@link JsonDocuments#write}
     */
    public byte[] write() {
        Map<EObject, String> written = new IdentityHashMap<>();
        byte[] bytes = DocumentWriter.write(document, (object, depth) -> object.eContainer() == document
                ? Optional.of(piece(object, depth, written)) : Optional.empty());
        known = written;
        return bytes;
    }

    private String piece(EObject object, int depth, Map<EObject, String> written) {
        String piece = Optional.ofNullable(known.get(object)).orElseGet(() -> spelled(object, depth));
        written.put(object, piece);
        return piece;
    }

    private static String spelled(EObject object, int depth) {
        StringBuilder text = new StringBuilder();
        try {
            new DocumentWriter(new Layout(text, depth), (part, inside) -> Optional.empty()).object(object);
        } catch (IOException e) {
            throw new IllegalStateException("a text in memory cannot fail to be written", e);
        }
        return text.toString();
    }
}
