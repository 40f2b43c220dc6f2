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
import org.ferrule.ui.preferences.FigureWords;

/**
 * The words to the right of a text that say what it amounts to. Where there is no room for all of them, the last units
 * are left to the tooltip, since a figure that is cut off reads as another.
 */
final class MeaningLabel {

    private static final int TEXT_CHARACTERS = 16;
    private static final int LEAST_TEXT_CHARACTERS = 12;
    private static final int LEAST_CHARACTERS = 8;
    private static final int CHARACTERS = 32;
    private static final String ELLIPSIS = "\u2026";

    private final Label label;
    private final boolean names;
    private String words = "";

    /** Creates the label of a figure and shares out the row between it and the text. */
    MeaningLabel(FieldForm form, Text text) {
        this(form, text, false);
    }

    /**
     * Creates the label and shares out the row between it and the text.
     *
     * @param names whether names are shown, which may be cut
     */
    MeaningLabel(FieldForm form, Text text, boolean names) {
        this.names = names;
        label = form.toolkit().createLabel(form.parent(), "");
        ThemeChange.text(label, Colours::muted);
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false)
                .hint(wide(text, CHARACTERS), SWT.DEFAULT).minSize(wide(text, LEAST_CHARACTERS), SWT.DEFAULT)
                .applyTo(label);
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false)
                .hint(wide(text, TEXT_CHARACTERS), SWT.DEFAULT).minSize(wide(text, LEAST_TEXT_CHARACTERS), SWT.DEFAULT)
                .applyTo(text);
        label.addListener(SWT.Resize, event -> fit());
    }

    private static int wide(Text text, int characters) {
        GC gc = new GC(text);
        try {
            return (int) Math.ceil(gc.getFontMetrics().getAverageCharacterWidth() * characters);
        } finally {
            gc.dispose();
        }
    }

    void show(String meaning) {
        words = meaning;
        if (!label.isDisposed()) {
            label.setToolTipText(words.isEmpty() ? null : words);
            fit();
        }
    }

    private void fit() {
        String fitting = fitting();
        if (!fitting.equals(label.getText())) {
            label.setText(fitting);
        }
    }

    private String fitting() {
        int room = label.getSize().x;
        String shown = words;
        GC gc = new GC(label);
        try {
            while (room > 0 && shown.contains(FigureWords.BETWEEN_UNITS) && gc.textExtent(shown).x > room) {
                shown = shown.substring(0, shown.lastIndexOf(FigureWords.BETWEEN_UNITS));
            }
            return shortened(shown, room, gc).replace("&", "&&");
        } finally {
            gc.dispose();
        }
    }

    /** Only a name is cut, with a sign that it is. */
    private String shortened(String shown, int room, GC gc) {
        if (!names || room <= 0 || gc.textExtent(shown).x <= room) {
            return shown;
        }
        int end = shown.length();
        while (end > 0 && gc.textExtent(shown.substring(0, end) + ELLIPSIS).x > room) {
            end--;
        }
        return shown.substring(0, end).stripTrailing() + ELLIPSIS;
    }

    String text() {
        return words;
    }
}
