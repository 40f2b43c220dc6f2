/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.shelf;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Composite;
import org.ferrule.shelf.code.CodeException;
import org.ferrule.ui.look.Colours;

/** Says below the scan field what was done, or where a code is wrong. */
final class ScanLine {

    private static final String UNSTYLED = "org.eclipse.e4.ui.css.disabled";
    private static final String NOTHING_THERE = "\u2423";
    private static final String BETWEEN = "   \u2013  ";

    private final StyledText words;

    ScanLine(Composite parent) {
        words = new StyledText(parent, SWT.READ_ONLY | SWT.WRAP | SWT.NO_FOCUS);
        words.setData(UNSTYLED, Boolean.TRUE);
        words.setVisible(false);
        GridDataFactory.fillDefaults().grab(true, false).span(4, 1).hint(200, SWT.DEFAULT).applyTo(words);
    }

    void clear() {
        show("");
    }

    /** Says what was done. */
    void tell(String done) {
        show(done);
        words.setForeground(words.getParent().getForeground());
    }

    /** Says what cannot be done. */
    void refuse(String problem) {
        show("\u25b2 " + problem);
        words.setForeground(Colours.error());
    }

    /** Points at the place of a code at which something else was expected. */
    void point(CodeException fault) {
        String code = printable(fault.text());
        String pointed = fault.position() >= code.length() ? code + NOTHING_THERE : code;
        show(pointed + BETWEEN + "character " + (fault.position() + 1) + ": expected " + fault.expected());
        words.setForeground(Colours.error());
        StyleRange range = new StyleRange();
        range.start = Math.min(fault.position(), pointed.length() - 1);
        range.length = 1;
        range.fontStyle = SWT.BOLD;
        range.underline = true;
        range.underlineStyle = SWT.UNDERLINE_ERROR;
        range.underlineColor = Colours.error();
        words.setStyleRange(range);
    }

    /** Control characters as the pictures that Unicode has for them. */
    private static String printable(String text) {
        StringBuilder printable = new StringBuilder();
        text.chars().forEach(c -> printable.append(c < ' ' ? (char) ('\u2400' + c) : (char) c));
        return printable.toString();
    }

    private void show(String text) {
        words.setText(text);
        words.setBackground(words.getParent().getBackground());
        words.setVisible(!text.isEmpty());
        words.getParent().getParent().layout(true, true);
    }

    /** Returns what is said. */
    String text() {
        return words.getText();
    }
}
