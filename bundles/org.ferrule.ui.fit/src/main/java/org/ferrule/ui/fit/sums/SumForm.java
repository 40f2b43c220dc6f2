/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.sums;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.ferrule.calc.Calculator;
import org.ferrule.calc.input.ArgumentException;
import org.ferrule.calc.input.Arguments;
import org.ferrule.calc.input.Parameter;

/** The form of one calculator. A parameter that may be given again has an empty row below its last one. */
final class SumForm {

    private final Composite control;
    private final Calculator calculator;
    private final Runnable changed;
    private final Map<Parameter<?>, List<ValueRow>> rows = new LinkedHashMap<>();
    private final Map<Parameter<?>, Composite> grids = new LinkedHashMap<>();

    /** Creates the form; the listener hears of every change. */
    SumForm(Composite parent, Calculator calculator, Map<String, List<String>> texts, Runnable changed) {
        this.calculator = calculator;
        this.changed = changed;
        control = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(6, 6).spacing(0, 4).applyTo(control);
        Label purpose = new Label(control, SWT.WRAP);
        purpose.setText(calculator.purpose());
        GridDataFactory.fillDefaults().grab(true, false).hint(160, SWT.DEFAULT).applyTo(purpose);
        calculator.parameters().forEach(parameter -> add(parameter, texts.getOrDefault(parameter.name(), List.of())));
    }

    private void add(Parameter<?> parameter, List<String> values) {
        Composite grid = new Composite(control, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(8, 3).applyTo(grid);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(grid);
        grids.put(parameter, grid);
        rows.put(parameter, new ArrayList<>());
        values.forEach(value -> addRow(parameter).fill(value));
        if (values.isEmpty() || parameter.occurrence().isMany()) {
            addRow(parameter);
        }
    }

    private ValueRow addRow(Parameter<?> parameter) {
        List<ValueRow> there = rows.get(parameter);
        String name = heading(parameter) + (parameter.occurrence().isMany() ? " " + (there.size() + 1) : "");
        ValueRow row = new ValueRow(grids.get(parameter), parameter, name, () -> changed(parameter));
        there.add(row);
        return row;
    }

    private static String heading(Parameter<?> parameter) {
        String words = parameter.name().replace('-', ' ');
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private void changed(Parameter<?> parameter) {
        List<ValueRow> there = rows.get(parameter);
        boolean full = there.isEmpty() || !there.get(there.size() - 1).value().isEmpty();
        if (parameter.occurrence().isMany() && full) {
            addRow(parameter);
        }
        changed.run();
    }

    Composite control() {
        return control;
    }

    Calculator calculator() {
        return calculator;
    }

    /** Returns what is filled in, by name of parameter. */
    Map<String, List<String>> texts() {
        Map<String, List<String>> texts = new LinkedHashMap<>();
        rows.forEach((parameter, values) -> texts.put(parameter.name(),
                values.stream().map(ValueRow::value).filter(value -> !value.isEmpty()).toList()));
        return texts;
    }

    /** Returns the names of what must still be filled in. */
    List<String> missing() {
        Map<String, List<String>> texts = texts();
        return calculator.parameters().stream().filter(parameter -> parameter.occurrence().isRequired()
                && texts.get(parameter.name()).isEmpty()).map(SumForm::heading).toList();
    }

    /** Returns the arguments, if every text can be used and nothing is missing; shows below each row what is wrong. */
    Optional<Arguments> read() {
        long wrong = rows.values().stream().flatMap(List::stream).filter(row -> !row.check()).count();
        return wrong > 0 || !missing().isEmpty() ? Optional.empty()
                : Optional.of(Arguments.of(calculator.parameters(), texts()));
    }

    /** Shows what is wrong with texts that are each right; tells whether there is a text to show it below. */
    boolean show(ArgumentException problem) {
        Optional<ValueRow> row = rows.entrySet().stream()
                .filter(entry -> entry.getKey().name().equals(problem.parameter()))
                .flatMap(entry -> entry.getValue().stream())
                .filter(each -> !each.value().isEmpty() && problem.text().filter(each.value()::equals).isPresent())
                .findFirst();
        row.ifPresent(each -> each.show(problem.problem()));
        return row.isPresent();
    }

    boolean setFocus() {
        return rows.values().stream().flatMap(List::stream).findFirst().map(row -> row.control().setFocus())
                .orElse(false);
    }
}
