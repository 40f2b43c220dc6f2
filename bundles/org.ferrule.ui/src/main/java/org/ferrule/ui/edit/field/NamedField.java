/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit.field;

import java.util.function.UnaryOperator;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.jface.fieldassist.IContentProposalProvider;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;

/** A field for the id of something in another document, with the name of that beside it. */
public final class NamedField extends TypedField {

    /** Ids are longer than figures, by this part of their length. */
    private static final int LONGER = 4;

    private final UnaryOperator<String> names;
    private final MeaningLabel meaning;

    NamedField(FieldForm form, EAttribute feature, UnaryOperator<String> names) {
        super(form, feature, SWT.SINGLE | SWT.BORDER, 1);
        this.names = names;
        meaning = new MeaningLabel(form, textControl(), true);
        GridData place = (GridData) textControl().getLayoutData();
        place.widthHint += place.widthHint / LONGER;
        placeProblems();
    }

    /** Lets Control and Space propose ids; what is accepted becomes part of the document at once. */
    public NamedField proposing(IContentProposalProvider provider) {
        Assist.replacing(textControl(), provider, this::commitDraft);
        return this;
    }

    @Override
    Reading read(String typed) {
        return Reading.of(typed);
    }

    @Override
    String text(Object value) {
        return value.toString();
    }

    @Override
    void showMeaning(Object value) {
        meaning.show(value == null ? "" : names.apply(value.toString().strip()));
    }
}
