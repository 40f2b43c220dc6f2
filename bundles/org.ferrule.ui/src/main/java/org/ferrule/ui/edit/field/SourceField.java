/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit.field;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.ferrule.model.Document;
import org.ferrule.model.ModelPackage;
import org.ferrule.model.Source;

/** A field for the source of what an object states, chosen among the sources of its document, and for the page in it. */
public final class SourceField extends Field {

    private final Combo combo;
    private final TextField page;
    private List<String> ids = List.of();

    SourceField(FieldForm form) {
        super(form, ModelPackage.Literals.SOURCED__SOURCE);
        combo = new Combo(parent(), SWT.READ_ONLY | SWT.DROP_DOWN);
        form.toolkit().adapt(combo, true, false);
        place(combo, 2);
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).span(2, 1).hint(200, SWT.DEFAULT)
                .applyTo(combo);
        placeProblems();
        combo.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> choose()));
        combo.addListener(SWT.MouseVerticalWheel, event -> event.doit = false);
        page = form.text(ModelPackage.Literals.SOURCED__PAGE);
    }

    private void choose() {
        int chosen = combo.getSelectionIndex();
        commit(chosen <= 0 ? null : ids.get(chosen));
    }

    @Override
    public Control control() {
        return combo;
    }

    /** Returns the field for the page. */
    public TextField page() {
        return page;
    }

    @Override
    void display(Object value, Object inherited) {
        List<String> titles = new ArrayList<>(List.of(inherited == null ? "not stated" : "as the line: " + inherited));
        List<String> known = new ArrayList<>(List.of(""));
        sources().forEach(source -> {
            titles.add(source.getTitle() == null ? source.getId() : source.getId() + "  \u2013  " + source.getTitle());
            known.add(String.valueOf(source.getId()));
        });
        if (value instanceof String id && !known.contains(id)) {
            titles.add(id + "  \u2013  not among the sources of this document");
            known.add(id);
        }
        ids = known;
        combo.setItems(titles.toArray(String[]::new));
        combo.select(value == null ? 0 : known.indexOf(value));
    }

    private List<Source> sources() {
        return form().session().document().map(Document::getSources).map(List::copyOf).orElse(List.of());
    }
}
