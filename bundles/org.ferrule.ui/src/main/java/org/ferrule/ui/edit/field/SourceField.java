/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit.field;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.ferrule.model.Document;
import org.ferrule.model.ModelPackage;
import org.ferrule.model.Source;
import org.ferrule.ui.document.DocumentSession;

/** A field for the source of what an object states, chosen among the sources of its document, and for the page in it. */
public final class SourceField extends ReferenceField {

    private final TextField page;

    SourceField(FieldForm form) {
        super(form, ModelPackage.Literals.SOURCED__SOURCE, object -> titles(form.session()));
        page = form.text(ModelPackage.Literals.SOURCED__PAGE);
    }

    /** Returns the field for the page. */
    public TextField page() {
        return page;
    }

    private static Map<String, String> titles(DocumentSession session) {
        Map<String, String> titles = new LinkedHashMap<>();
        List<Source> sources = session.document().map(Document::getSources).map(List::copyOf).orElse(List.of());
        sources.stream().filter(source -> source.getId() != null).forEach(source -> titles.put(source.getId(),
                source.getTitle() == null ? source.getId() : source.getId() + "  \u2013  " + source.getTitle()));
        return titles;
    }
}
