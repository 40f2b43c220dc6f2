/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.sums;

import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.ferrule.calc.input.ArgumentException;
import org.ferrule.calc.input.Parameter;
import org.ferrule.ui.look.Colours;

/** One value of a parameter: its control, and below it what is wrong with the text. */
final class ValueRow {

    private static final int LEAST_WIDTH = 110;
    /** Keeps the theme from giving the words its own colour instead of that of errors. */
    private static final String UNSTYLED = "org.eclipse.e4.ui.css.disabled";

    private final Parameter<?> parameter;
    private final Label label;
    private final Control control;
    private final Label error;

    /**
     * Creates a row in a grid of two columns.
     *
     * @param heading what stands before it
     * @param changed hears of every change
     */
    ValueRow(Composite parent, Parameter<?> parameter, String heading, Runnable changed) {
        this.parameter = parameter;
        label = new Label(parent, SWT.NONE);
        label.setText(heading);
        label.setToolTipText(parameter.help());
        control = parameter.kind().choices().isEmpty() ? text(parent, changed) : combo(parent, changed);
        control.setToolTipText(parameter.help());
        control.getAccessible().addAccessibleListener(new Words());
        GridDataFactory.fillDefaults().grab(true, false).hint(LEAST_WIDTH, SWT.DEFAULT).applyTo(control);
        error = new Label(parent, SWT.WRAP);
        error.setData(UNSTYLED, Boolean.TRUE);
        error.setForeground(Colours.error());
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(LEAST_WIDTH, SWT.DEFAULT).exclude(true)
                .applyTo(error);
        error.setVisible(false);
    }

    private Control text(Composite parent, Runnable changed) {
        Text text = new Text(parent, SWT.BORDER);
        text.setMessage(parameter.defaultText().map(usual -> usual + " unless given")
                .orElse("such as " + parameter.kind().hint()));
        text.addModifyListener(event -> changed.run());
        return text;
    }

    private Control combo(Composite parent, Runnable changed) {
        Combo combo = new Combo(parent, SWT.DROP_DOWN | SWT.READ_ONLY);
        combo.add("");
        parameter.kind().choices().forEach(combo::add);
        combo.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> changed.run()));
        return combo;
    }

    Control control() {
        return control;
    }

    /** Returns the text without blanks around it; empty if nothing is given. */
    String value() {
        return (control instanceof Text text ? text.getText() : ((Combo) control).getText()).strip();
    }

    void fill(String value) {
        if (control instanceof Text text) {
            text.setText(value);
        } else {
            ((Combo) control).setText(value);
        }
    }

    /** Reads the text, and shows what is wrong with it; tells whether it can be used. */
    boolean check() {
        Optional<ArgumentException> wrong = wrong();
        show(wrong.map(ArgumentException::problem).orElse(""));
        return wrong.isEmpty();
    }

    private Optional<ArgumentException> wrong() {
        if (value().isEmpty()) {
            return Optional.empty();
        }
        try {
            parameter.read(value());
            return Optional.empty();
        } catch (ArgumentException e) {
            return Optional.of(e);
        }
    }

    /** Shows what is wrong; nothing if it is empty. */
    void show(String problem) {
        error.setText(problem);
        error.setVisible(!problem.isEmpty());
        ((GridData) error.getLayoutData()).exclude = problem.isEmpty();
    }

    /** What the row is called, and what is wrong, for those who cannot see it. */
    private final class Words extends AccessibleAdapter {

        @Override
        public void getName(AccessibleEvent event) {
            event.result = label.getText();
        }

        @Override
        public void getDescription(AccessibleEvent event) {
            event.result = error.getText().isEmpty() ? parameter.help() : error.getText();
        }
    }
}
