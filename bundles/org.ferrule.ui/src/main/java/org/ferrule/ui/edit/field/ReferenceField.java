/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit.field;

import java.util.ArrayList;
import java.util.Arrays;
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
 * unstated. A name of nothing is shown as it is, and said to be so. Of many names the list gets only the one that is
 * chosen until somebody goes there, since the platform takes longer to lay out a form the longer its lists are.
 */
public class ReferenceField extends Field {

    private static final int WIDTH = 120;
    private static final int FEW = 50;

    private final Combo combo;
    private final Function<EObject, Map<String, String>> choices;
    private List<Choice> offered = List.of();
    private int chosen;

    /** A name, or null for none, and the words for it. */
    private record Choice(String name, String words) {
    }

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
        combo.addListener(SWT.FocusIn, event -> fill());
        // the wheel is for scrolling the form, not for changing what is under the mouse
        combo.addListener(SWT.MouseVerticalWheel, event -> event.doit = false);
    }

    private void choose() {
        if (isFilled()) {
            commit(offered.get(combo.getSelectionIndex()).name());
        }
    }

    private boolean isFilled() {
        return combo.getItemCount() == offered.size();
    }

    /** Adds the others round the chosen one: a list that is set anew loses the focus (SWT 3.132 on GTK). */
    private void fill() {
        if (!isFilled()) {
            for (int i = 0; i < offered.size(); i++) {
                if (i != chosen) {
                    combo.add(offered.get(i).words(), i);
                }
            }
        }
    }

    private void list(List<Choice> choicesNow, int selected) {
        String[] words = choicesNow.stream().map(Choice::words).toArray(String[]::new);
        if (!Arrays.equals(words, combo.getItems())) {
            combo.setItems(words);
        }
        combo.select(selected);
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
        List<Choice> all = new ArrayList<>();
        all.add(new Choice(null, inherited == null ? "not stated" : "as the line: " + inherited));
        known.forEach((name, words) -> all.add(new Choice(name, words)));
        show(List.copyOf(all), value == null ? 0 : 1 + List.copyOf(known.keySet()).indexOf(value));
    }

    private void show(List<Choice> all, int index) {
        offered = all;
        chosen = index;
        if (all.size() <= FEW || combo.isFocusControl()) {
            list(all, index);
        } else {
            list(List.of(all.get(index)), 0);
        }
    }
}
