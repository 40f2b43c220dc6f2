/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit.field;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.swt.SWT;
import org.ferrule.ui.Services;
import org.ferrule.ui.preferences.FigureWords;
import org.ferrule.ui.preferences.UnitPreferences;

/**
 * A field for a dimension, a pressure or an offset. The text is kept as typed; beside it stands what it amounts to in
 * the preferred units, below it what is wrong, underlined. Control and Space proposes
 * what may follow.
 */
public final class DimensionField extends TypedField {

    private final MeaningLabel meaning;
    private final QuantityReader reader;
    private final UnitPreferences units = Services.get(UnitPreferences.class);
    private Object shown;

    DimensionField(FieldForm form, EAttribute feature) {
        super(form, feature, SWT.SINGLE | SWT.BORDER, 1);
        reader = QuantityReader.of(feature, new FigureWords(units));
        meaning = new MeaningLabel(form, textControl());
        placeProblems();
        Assist.inserting(textControl(), reader.proposals()::at);
        Runnable follow = () -> textControl().getDisplay().asyncExec(this::showMeaningAgain);
        units.addListener(follow);
        textControl().addDisposeListener(event -> units.removeListener(follow));
    }

    @Override
    Reading read(String typed) {
        return reader.read(typed);
    }

    @Override
    String text(Object value) {
        return value.toString();
    }

    @Override
    void showMeaning(Object value) {
        shown = value;
        showMeaningAgain();
    }

    private void showMeaningAgain() {
        meaning.show(shown == null ? "" : reader.meaning(shown));
    }

    /** Returns what the text amounts to, as it is shown beside it. */
    public String meaning() {
        return meaning.text();
    }
}
