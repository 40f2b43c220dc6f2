/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.beside;

import java.util.stream.Stream;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;

/** Sets fields for a narrow column: the label goes above its field, which gets the room of both. */
final class NarrowFields {

    private static final int COLUMNS = 3;

    private NarrowFields() {
    }

    static void apply(Composite parent) {
        if (parent.getLayout() instanceof GridLayout layout && layout.numColumns == COLUMNS) {
            layout.verticalSpacing = 3;
            Control[] controls = parent.getChildren();
            for (int i = 1; i < controls.length; i++) {
                if (controls[i - 1] instanceof Label label && takesRoom(controls[i])) {
                    putAbove(label, controls[i]);
                }
            }
        }
        putBelow(parent);
        Stream.of(parent.getChildren()).filter(Composite.class::isInstance).map(Composite.class::cast)
                .forEach(NarrowFields::apply);
    }

    /** A table gets the width of its buttons too; they stand in a row below it. */
    private static void putBelow(Composite parent) {
        Control[] controls = parent.getChildren();
        for (int i = 1; i < controls.length; i++) {
            if (controls[i - 1] instanceof Table table && controls[i] instanceof Composite buttons
                    && buttons.getLayout() instanceof GridLayout row) {
                ((GridData) table.getLayoutData()).horizontalSpan = 2;
                GridDataFactory.fillDefaults().span(2, 1).applyTo(buttons);
                row.numColumns = buttons.getChildren().length;
            }
        }
    }

    /** A box to tick stands well beside its label, and what a text amounts to beside that. */
    private static boolean takesRoom(Control control) {
        boolean box = control instanceof Button && (control.getStyle() & SWT.CHECK) != 0;
        return !box && !(control instanceof Label) && !((GridData) control.getLayoutData()).exclude;
    }

    private static void putAbove(Label label, Control field) {
        ((GridData) label.getLayoutData()).horizontalSpan = COLUMNS;
        GridData data = (GridData) field.getLayoutData();
        data.horizontalSpan = Math.min(COLUMNS, data.horizontalSpan + 1);
    }
}
