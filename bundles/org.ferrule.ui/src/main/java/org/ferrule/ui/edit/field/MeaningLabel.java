/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit.field;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.ferrule.ui.look.Colours;
import org.ferrule.ui.look.ThemeChange;

/** The words to the right of a text that say what it amounts to. */
final class MeaningLabel {

    private static final int TEXT_CHARACTERS = 16;
    private static final int LEAST_CHARACTERS = 12;
    private static final int CHARACTERS = 32;

    private final Label label;

    /** Creates the label and shares out the row between it and the text. */
    MeaningLabel(FieldForm form, Text text) {
        label = form.toolkit().createLabel(form.parent(), "");
        ThemeChange.text(label, Colours::muted);
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false)
                .hint(wide(text, CHARACTERS), SWT.DEFAULT).minSize(wide(text, LEAST_CHARACTERS), SWT.DEFAULT)
                .applyTo(label);
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false)
                .hint(wide(text, TEXT_CHARACTERS), SWT.DEFAULT).minSize(wide(text, TEXT_CHARACTERS), SWT.DEFAULT)
                .applyTo(text);
    }

    private static int wide(Text text, int characters) {
        GC gc = new GC(text);
        try {
            return (int) Math.ceil(gc.getFontMetrics().getAverageCharacterWidth() * characters);
        } finally {
            gc.dispose();
        }
    }

    void show(String words) {
        if (!label.isDisposed()) {
            label.setText(words.replace("&", "&&"));
            label.setToolTipText(words.isEmpty() ? null : words);
        }
    }

    String text() {
        return label.getText();
    }
}
