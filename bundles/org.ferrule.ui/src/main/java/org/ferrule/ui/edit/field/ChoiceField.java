/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit.field;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EEnumLiteral;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;

/** A field for one word out of an enumeration; the first entry leaves it unstated. */
public final class ChoiceField extends Field {

    private final Combo combo;
    private final List<Enumerator> words = new ArrayList<>();

    ChoiceField(FieldForm form, EAttribute feature) {
        super(form, feature);
        combo = new Combo(parent(), SWT.READ_ONLY | SWT.DROP_DOWN);
        form.toolkit().adapt(combo, true, false);
        ((EEnum) feature.getEAttributeType()).getELiterals().stream().map(EEnumLiteral::getInstance)
                .forEach(words::add);
        place(combo, 2);
        placeProblems();
        offer(null);
        combo.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> choose()));
        // the wheel is for scrolling the form, not for changing what is under the mouse
        combo.addListener(SWT.MouseVerticalWheel, event -> event.doit = false);
    }

    private void offer(Object inherited) {
        List<String> items = new ArrayList<>();
        items.add(inherited instanceof Enumerator word ? "as the line: " + word.getLiteral() : "not stated");
        words.forEach(word -> items.add(word.getLiteral()));
        if (!items.equals(List.of(combo.getItems()))) {
            combo.setItems(items.toArray(String[]::new));
        }
    }

    private void choose() {
        int chosen = combo.getSelectionIndex();
        commit(chosen <= 0 ? null : words.get(chosen - 1));
    }

    @Override
    public Control control() {
        return combo;
    }

    @Override
    void display(Object value, Object inherited) {
        offer(inherited);
        combo.select(words.indexOf(value) + 1);
    }
}
