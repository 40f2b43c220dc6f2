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
import org.eclipse.swt.widgets.Control;
import org.ferrule.ui.look.DropDown;

/**
 * A field for the name of something else in the document, chosen among what there is; the first entry leaves it
 * unstated. A name of nothing is shown as it is, and said to be so.
 */
public class ReferenceField extends Field {

    private static final int WIDTH = 120;

    private final DropDown list;
    private final Function<EObject, Map<String, String>> choices;
    private List<String> names = List.of();

    ReferenceField(FieldForm form, EAttribute feature, Function<EObject, Map<String, String>> choices) {
        super(form, feature);
        this.choices = choices;
        list = new DropDown(parent(), WIDTH).onChoice(this::choose);
        form.toolkit().adapt(list.control(), true, false);
        place(list, 2);
        placeProblems();
    }

    private void choose() {
        commit(list.chosen() <= 0 ? null : names.get(list.chosen() - 1));
    }

    @Override
    public Control control() {
        return list.control();
    }

    @Override
    void display(Object value, Object inherited) {
        Map<String, String> known = new LinkedHashMap<>(object().map(choices).orElse(Map.of()));
        if (value != null) {
            known.putIfAbsent((String) value, value + "  \u2013  not found in this document");
        }
        names = List.copyOf(known.keySet());
        List<String> words = new ArrayList<>();
        words.add(inherited == null ? "not stated" : "as the line: " + inherited);
        words.addAll(known.values());
        list.show(words, value == null ? 0 : 1 + names.indexOf(value));
    }
}
