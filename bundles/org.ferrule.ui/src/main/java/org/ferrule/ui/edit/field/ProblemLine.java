/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit.field;

import java.util.Objects;

import org.eclipse.jface.fieldassist.FieldDecorationRegistry;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.ferrule.model.check.Severity;
import org.ferrule.ui.look.Colours;

/** The line below a field that says what is wrong with it and underlines where; takes no room when nothing is. */
final class ProblemLine {

    private static final String BETWEEN = "  \u2013  ";
    private static final int LEAST_WIDTH = 160;
    /** Keeps the theme from giving the words its own colour instead of that of errors. */
    private static final String UNSTYLED = "org.eclipse.e4.ui.css.disabled";
    private static final String NOTHING_THERE = "\u2423";

    private final FieldForm form;
    private final Label spacer;
    private final Composite line;
    private final Label icon;
    private final StyledText words;
    private InputProblem shown;

    ProblemLine(FieldForm form) {
        this.form = form;
        spacer = form.toolkit().createLabel(form.parent(), "");
        spacer.setLayoutData(hidden(1));
        line = form.toolkit().createComposite(form.parent());
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(6, 0).applyTo(line);
        icon = form.toolkit().createLabel(line, "");
        GridDataFactory.swtDefaults().align(SWT.BEGINNING, SWT.BEGINNING).applyTo(icon);
        words = new StyledText(line, SWT.READ_ONLY | SWT.WRAP | SWT.NO_FOCUS);
        words.setData(UNSTYLED, Boolean.TRUE);
        words.setBackground(line.getBackground());
        GridDataFactory.fillDefaults().grab(true, false).hint(LEAST_WIDTH, SWT.DEFAULT).applyTo(words);
        line.setLayoutData(hidden(2));
        line.setVisible(false);
    }

    private static GridData hidden(int columns) {
        GridData data = new GridData(SWT.FILL, SWT.TOP, false, false, columns, 1);
        data.exclude = true;
        return data;
    }

    /** Shows the problem, or nothing if it is null. */
    void show(InputProblem problem) {
        if (Objects.equals(problem, shown)) {
            return;
        }
        boolean resized = problem == null || shown == null || !problem.message().equals(shown.message());
        shown = problem;
        if (problem != null) {
            paint(problem);
        }
        if (resized) {
            makeRoom(problem != null);
        }
    }

    /** Returns what is shown, for those who cannot see it. */
    String text() {
        return shown == null ? "" : shown.message();
    }

    private void paint(InputProblem problem) {
        boolean points = !problem.text().isEmpty();
        String pointed = problem.start() >= problem.text().length() ? problem.text() + NOTHING_THERE : problem.text();
        words.setText((points ? pointed + BETWEEN : "") + problem.message());
        words.setBackground(line.getBackground());
        words.setForeground(problem.severity() == Severity.ERROR ? Colours.error() : icon.getForeground());
        if (points) {
            words.setStyleRange(underline(problem, pointed));
        }
        icon.setImage(image(problem.severity()));
    }

    private static StyleRange underline(InputProblem problem, String pointed) {
        StyleRange range = new StyleRange();
        range.start = problem.start();
        range.length = Math.max(1, Math.min(problem.end(), pointed.length()) - problem.start());
        range.fontStyle = SWT.BOLD;
        range.underline = true;
        range.underlineStyle = SWT.UNDERLINE_ERROR;
        range.underlineColor = Colours.error();
        return range;
    }

    private static Image image(Severity severity) {
        String id = switch (severity) {
            case ERROR -> FieldDecorationRegistry.DEC_ERROR;
            case WARNING -> FieldDecorationRegistry.DEC_WARNING;
            case INFO -> FieldDecorationRegistry.DEC_INFORMATION;
        };
        return FieldDecorationRegistry.getDefault().getFieldDecoration(id).getImage();
    }

    private void makeRoom(boolean needed) {
        line.setVisible(needed);
        ((GridData) line.getLayoutData()).exclude = !needed;
        ((GridData) spacer.getLayoutData()).exclude = !needed;
        spacer.setVisible(needed);
        form.resized();
    }
}
