/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit.field;

import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.ferrule.model.Features;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.DimensionRepair;
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
        textControl().setData(DimensionField.class.getName(), this);
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

    /** Returns the field that a control is the text of. */
    public static Optional<DimensionField> of(Control control) {
        return control == null ? Optional.empty()
                : Optional.ofNullable((DimensionField) control.getData(DimensionField.class.getName()));
    }

    /** Returns what the text could mean instead; nothing if it must not be changed, or is clear. */
    public List<DimensionRepair> repairs() {
        boolean dimension = feature().getEType().getInstanceClass() == Dimension.class;
        return dimension && form().session().editable() && object().isPresent()
                ? DimensionRepair.of(textControl().getText().trim(), Features.figureKind(feature())) : List.of();
    }

    /** Makes a repair part of the document, in place of what is typed. */
    public void take(DimensionRepair repair) {
        textControl().setText(repair.text());
        commitDraft();
    }
}
