/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit.field;

import java.util.Map;
import java.util.Optional;
import java.util.WeakHashMap;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.FocusListener;
import org.eclipse.swt.events.KeyEvent;
import org.eclipse.swt.events.KeyListener;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Text;

/**
 * A field in which a text is typed. What is typed becomes part of the document on Enter and when the field is left, if
 * it can be read; Escape brings the former text back. A text that cannot be read stays in the field, for this object,
 * until it is put right or given up.
 */
abstract class TypedField extends Field {

    private final Text text;
    private final Map<EObject, String> unreadable = new WeakHashMap<>();
    private String stated = "";
    private boolean displaying;

    TypedField(FieldForm form, EStructuralFeature feature, int style, int columns) {
        super(form, feature);
        text = form.toolkit().createText(parent(), "", style);
        place(text, columns);
        text.addModifyListener(event -> typed());
        text.addSelectionListener(SelectionListener.widgetDefaultSelectedAdapter(event -> enter()));
        text.addFocusListener(FocusListener.focusLostAdapter(event -> commitDraft()));
        text.addKeyListener(KeyListener.keyPressedAdapter(this::escape));
        text.addDisposeListener(event -> form.session().draft(this, false));
    }

    @Override
    public Control control() {
        return text;
    }

    /** Returns the text control. */
    public Text textControl() {
        return text;
    }

    /** Reads a text that is not empty. */
    abstract Reading read(String typed);

    /** Returns the text of a value of the document. */
    abstract String text(Object value);

    /** Shows what the text amounts to; null for a text that cannot be read or is empty. */
    abstract void showMeaning(Object value);

    @Override
    void display(Object value, Object inherited) {
        String now = value == null ? "" : text(value);
        text.setMessage(inherited == null ? "" : text(inherited));
        String draft = object().map(unreadable::get).orElse(null);
        if (draft == null && isUntouched() || draft != null || !text.isFocusControl()) {
            stated = now;
            put(draft == null ? now : draft);
        } else {
            stated = now;
        }
        showMeaning(currentReading().value());
    }

    /** The user's own typing is not overwritten by a refresh that does not change this field. */
    private boolean isUntouched() {
        return text.getText().equals(stated);
    }

    private void put(String shown) {
        if (!text.getText().equals(shown)) {
            displaying = true;
            text.setText(shown);
            displaying = false;
        }
    }

    @Override
    final void refreshMeaning() {
        showMeaning(currentReading().value());
    }

    @Override
    void enable(boolean editable) {
        text.setEditable(editable);
        text.setEnabled(object().isPresent());
    }

    @Override
    Optional<InputProblem> inputProblem() {
        return currentReading().problem();
    }

    @Override
    void commitDraft() {
        Reading reading = currentReading();
        if (isUntouched() || object().isEmpty() || !form().session().editable()) {
            forget();
        } else if (reading.readable()) {
            forget();
            stated = text.getText();
            commit(reading.value());
        } else {
            unreadable.put(object().orElseThrow(), text.getText());
        }
        form().session().draft(this, false);
    }

    @Override
    void leave() {
        commitDraft();
        stated = "";
        put("");
    }

    private void typed() {
        if (displaying) {
            return;
        }
        Reading reading = currentReading();
        form().session().draft(this, !isUntouched() && reading.readable() && form().session().editable());
        showMeaning(reading.value());
        refreshProblems();
    }

    private void enter() {
        commitDraft();
        text.selectAll();
    }

    private void escape(KeyEvent event) {
        if (event.keyCode == SWT.ESC && !isUntouched()) {
            forget();
            put(stated);
            form().session().draft(this, false);
            showMeaning(currentReading().value());
            refreshProblems();
            event.doit = false;
        }
    }

    private void forget() {
        object().ifPresent(unreadable::remove);
    }

    private Reading currentReading() {
        return text.getText().isBlank() ? Reading.EMPTY : read(text.getText());
    }
}
