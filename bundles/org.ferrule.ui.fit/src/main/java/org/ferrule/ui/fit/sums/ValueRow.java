/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.sums;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Stream;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.ferrule.ui.look.DropDown;
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
    private final Supplier<String> text;
    private final Consumer<String> filling;
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
        if (parameter.kind().choices().isEmpty()) {
            Text field = text(parent, changed);
            control = field;
            text = field::getText;
            filling = field::setText;
        } else {
            DropDown list = list(parent, changed);
            control = list.control();
            text = list::text;
            filling = value -> list.choose(list.words().indexOf(value));
        }
        control.getAccessible().addAccessibleListener(new Words());
        error = new Label(parent, SWT.WRAP);
        error.setData(UNSTYLED, Boolean.TRUE);
        error.setForeground(Colours.error());
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(LEAST_WIDTH, SWT.DEFAULT).exclude(true)
                .applyTo(error);
        error.setVisible(false);
    }

    private Text text(Composite parent, Runnable changed) {
        Text field = new Text(parent, SWT.BORDER);
        GridDataFactory.fillDefaults().grab(true, false).hint(LEAST_WIDTH, SWT.DEFAULT).applyTo(field);
        field.setToolTipText(parameter.help());
        field.setMessage(parameter.defaultText().map(usual -> usual + " unless given")
                .orElse("such as " + parameter.kind().hint()));
        field.addModifyListener(event -> changed.run());
        return field;
    }

    private DropDown list(Composite parent, Runnable changed) {
        DropDown list = new DropDown(parent, LEAST_WIDTH).explained(parameter.help()).onChoice(changed);
        list.show(Stream.concat(Stream.of(""), parameter.kind().choices().stream()).toList(), 0);
        return list;
    }

    Control control() {
        return control;
    }

    /** Returns the text without blanks around it; empty if nothing is given. */
    String value() {
        return text.get().strip();
    }

    void fill(String value) {
        filling.accept(value);
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
