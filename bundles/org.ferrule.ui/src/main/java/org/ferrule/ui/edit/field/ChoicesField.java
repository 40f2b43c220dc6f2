/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit.field;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EEnumLiteral;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.dialogs.ListSelectionDialog;
import org.ferrule.model.ModelPackage;
import org.ferrule.ui.look.ModelLabels;

/**
 * A field for any number of words: out of an enumeration they are chosen in a dialog, texts are typed with commas
 * between.
 */
public final class ChoicesField extends Field {

    private static final String COMMA = ", ";

    private final Text text;
    private final Button choose;
    private final boolean enumeration;
    private List<?> values = List.of();

    ChoicesField(FieldForm form, EAttribute feature) {
        super(form, feature);
        enumeration = feature.getEAttributeType() instanceof EEnum;
        text = form.toolkit().createText(parent(), "",
                SWT.BORDER | SWT.SINGLE | (enumeration ? SWT.READ_ONLY : SWT.NONE));
        place(text, enumeration ? 1 : 2);
        choose = enumeration ? chooseButton() : null;
        placeProblems();
        if (!enumeration) {
            text.addSelectionListener(SelectionListener.widgetDefaultSelectedAdapter(event -> commitDraft()));
            text.addListener(SWT.FocusOut, event -> commitDraft());
        }
    }

    private Button chooseButton() {
        Button button = form().toolkit().createButton(parent(), "Choose...", SWT.PUSH);
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> ask()));
        GridDataFactory.swtDefaults().align(SWT.BEGINNING, SWT.CENTER).applyTo(button);
        return button;
    }

    private void ask() {
        ListSelectionDialog dialog = ListSelectionDialog.of(literals())
                .contentProvider(ArrayContentProvider.getInstance())
                .labelProvider(LabelProvider.createTextProvider(ChoicesField::word))
                .title(ModelLabels.feature(feature()))
                .message(meansAll() ? "None means all." : ModelLabels.description(feature()))
                .preselect(values.toArray())
                .create(text.getShell());
        if (dialog.open() == Window.OK) {
            commit(new ArrayList<>(Arrays.asList(dialog.getResult())));
        }
    }

    /** A list of kinds that names none speaks of every kind; another list that is empty says nothing. */
    private boolean meansAll() {
        return feature().getEType() == ModelPackage.Literals.DEVICE_KIND;
    }

    private List<Enumerator> literals() {
        EEnum type = (EEnum) ((EAttribute) feature()).getEAttributeType();
        return type.getELiterals().stream().map(EEnumLiteral::getInstance).toList();
    }

    private static String word(Object value) {
        return value instanceof Enumerator word ? word.getLiteral() : String.valueOf(value);
    }

    @Override
    public Control control() {
        return enumeration ? choose : text;
    }

    @Override
    void display(Object value, Object inherited) {
        values = value instanceof List<?> list ? List.copyOf(list) : List.of();
        text.setText(joined(values));
        text.setMessage(inherited instanceof List<?> list ? joined(list) : meansAll() ? "all" : "");
    }

    private static String joined(List<?> words) {
        return words.stream().map(ChoicesField::word).collect(Collectors.joining(COMMA));
    }

    @Override
    void enable(boolean editable) {
        super.enable(editable);
        text.setEnabled(object().isPresent());
    }

    @Override
    void commitDraft() {
        if (!enumeration && object().isPresent() && form().session().editable()
                && !text.getText().equals(joined(values))) {
            commit(Stream.of(text.getText().split(",")).map(String::trim).filter(word -> !word.isEmpty()).toList());
        }
    }
}
