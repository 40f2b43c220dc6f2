/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.translate;

import java.util.HashMap;
import java.util.Map;

import org.eclipse.emf.ecore.EObject;
import org.ferrule.fit.device.SourceRef;
import org.ferrule.model.Document;
import org.ferrule.model.Source;
import org.ferrule.model.Sourced;

/** The sources of a document by id, for parts that name one or inherit it from what holds them. */
public final class SourceIndex {
    private final Map<String, Source> sources = new HashMap<>();

    /** The sources of that document. */
    public SourceIndex(Document document) {
        document.getSources().forEach(s -> sources.putIfAbsent(s.getId(), s));
    }

    /** The source of a part: its own, else that of the nearest part around it that names one. */
    public SourceRef of(Sourced part) {
        EObject around = part;
        while (around instanceof Sourced sourced) {
            if (sourced.getSource() != null) {
                return reference(sourced.getSource(), text(sourced.getPage()));
            }
            around = around.eContainer();
        }
        return SourceRef.NONE;
    }

    private SourceRef reference(String id, String page) {
        Source source = sources.get(id);
        return source == null ? new SourceRef(id, "", page)
                : new SourceRef(text(source.getTitle()), text(source.getRevision()), page);
    }

    private static String text(String value) {
        return value == null ? "" : value;
    }
}
