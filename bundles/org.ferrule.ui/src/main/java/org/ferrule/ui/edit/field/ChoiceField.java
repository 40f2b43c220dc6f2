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
import org.eclipse.swt.widgets.Control;
import org.ferrule.ui.look.DropDown;

/** A field for one word out of an enumeration; the first entry leaves it unstated. */
public final class ChoiceField extends Field {

    private static final int WIDTH = 120;

    private final DropDown list;
    private final List<Enumerator> words = new ArrayList<>();

    ChoiceField(FieldForm form, EAttribute feature) {
        super(form, feature);
        list = new DropDown(parent(), WIDTH).onChoice(this::choose);
        form.toolkit().adapt(list.control(), true, false);
        ((EEnum) feature.getEAttributeType()).getELiterals().stream().map(EEnumLiteral::getInstance)
                .forEach(words::add);
        place(list, 2);
        placeProblems();
        display(null, null);
    }

    private void choose() {
        commit(list.chosen() <= 0 ? null : words.get(list.chosen() - 1));
    }

    @Override
    public Control control() {
        return list.control();
    }

    @Override
    void display(Object value, Object inherited) {
        List<String> items = new ArrayList<>();
        items.add(inherited instanceof Enumerator word ? "as the line: " + word.getLiteral() : "not stated");
        words.forEach(word -> items.add(word.getLiteral()));
        list.show(items, words.indexOf(value) + 1);
    }
}
