/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit.field;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Control;

/** A field for yes or no. */
public final class FlagField extends Field {

    private final Button box;

    FlagField(FieldForm form, EAttribute feature) {
        super(form, feature);
        box = form.toolkit().createButton(parent(), "", SWT.CHECK);
        place(box, 2);
        placeProblems();
        box.addSelectionListener(SelectionListener
                .widgetSelectedAdapter(event -> commit(box.getSelection() == otherwise() ? null : box.getSelection())));
    }

    /** What holds where nothing is stated. */
    private boolean otherwise() {
        return Boolean.TRUE.equals(feature().getDefaultValue());
    }

    @Override
    public Control control() {
        return box;
    }

    @Override
    void display(Object value, Object inherited) {
        box.setSelection(value == null ? otherwise() : Boolean.TRUE.equals(value));
    }
}
