/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.beside;

import java.util.stream.Stream;

import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** Sets fields for a narrow column: what a text amounts to goes below its field, not beside it. */
final class NarrowFields {

    private static final int COLUMNS = 3;

    private NarrowFields() {
    }

    static void apply(Composite parent) {
        if (parent.getLayout() instanceof GridLayout layout && layout.numColumns == COLUMNS) {
            Control[] controls = parent.getChildren();
            for (int i = 1; i < controls.length; i++) {
                if (controls[i - 1] instanceof Text text && controls[i] instanceof Label meaning) {
                    putBelow(text, meaning);
                }
            }
        }
        Stream.of(parent.getChildren()).filter(Composite.class::isInstance).map(Composite.class::cast)
                .forEach(NarrowFields::apply);
    }

    private static void putBelow(Text text, Label meaning) {
        GridData field = (GridData) text.getLayoutData();
        GridData below = (GridData) meaning.getLayoutData();
        if (field.horizontalSpan == 1 && below.widthHint > 0) {
            field.horizontalSpan = 2;
            below.horizontalSpan = COLUMNS;
            below.horizontalIndent = below.widthHint / 2;
        }
    }
}
