/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit.field;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;

/**
 * A field for the name of something else in the document, chosen among what there is; the first entry leaves it
 * unstated. A name of nothing is shown as it is, and said to be so.
 */
public class ReferenceField extends Field {

    private static final int WIDTH = 200;

    private final Combo combo;
    private final Function<EObject, Map<String, String>> choices;
    private List<String> names = List.of();

    ReferenceField(FieldForm form, EAttribute feature, Function<EObject, Map<String, String>> choices) {
        super(form, feature);
        this.choices = choices;
        combo = new Combo(parent(), SWT.READ_ONLY | SWT.DROP_DOWN);
        form.toolkit().adapt(combo, true, false);
        place(combo, 2);
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).span(2, 1)
                .hint(WIDTH, SWT.DEFAULT).applyTo(combo);
        placeProblems();
        combo.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> choose()));
        // the wheel is for scrolling the form, not for changing what is under the mouse
        combo.addListener(SWT.MouseVerticalWheel, event -> event.doit = false);
    }

    private void choose() {
        int chosen = combo.getSelectionIndex();
        commit(chosen <= 0 ? null : names.get(chosen - 1));
    }

    @Override
    public Control control() {
        return combo;
    }

    @Override
    void display(Object value, Object inherited) {
        Map<String, String> known = new LinkedHashMap<>(object().map(choices).orElse(Map.of()));
        if (value != null) {
            known.putIfAbsent((String) value, value + "  \u2013  not found in this document");
        }
        List<String> items = new ArrayList<>(List.of(inherited == null ? "not stated" : "as the line: " + inherited));
        items.addAll(known.values());
        names = List.copyOf(known.keySet());
        combo.setItems(items.toArray(String[]::new));
        combo.select(value == null ? 0 : names.indexOf(value) + 1);
    }
}
