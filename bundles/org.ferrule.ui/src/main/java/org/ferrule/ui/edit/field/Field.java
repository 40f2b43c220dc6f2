/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit.field;

import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.events.FocusListener;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.forms.IFormColors;
import org.ferrule.ui.look.DropDown;
import org.ferrule.ui.look.ModelLabels;
import org.ferrule.ui.problem.FoundProblem;

/** A labelled control that shows and changes one feature of the object of its form. */
public abstract class Field {

    private static final int LEAST_LABEL = 120;

    private final FieldForm form;
    private final EStructuralFeature feature;
    private final Label label;
    private ProblemLine problems;

    /** Creates the label; the control follows by {@link #place}. */
    Field(FieldForm form, EStructuralFeature feature) {
        this.form = form;
        this.feature = feature;
        this.label = form.toolkit().createLabel(form.parent(), ModelLabels.feature(feature));
        label.setForeground(form.toolkit().getColors().getColor(IFormColors.TITLE));
        GridDataFactory.swtDefaults().hint(SWT.DEFAULT, SWT.DEFAULT).minSize(LEAST_LABEL, SWT.DEFAULT).applyTo(label);
    }

    /** Lays out the control over as many columns as are left, and the place for problems below it. */
    void place(Control control, int columns) {
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).span(columns, 1).applyTo(control);
        control.setToolTipText(null);
        describe(control);
    }

    /** Lays out a list over as many columns as are left, whatever its entries are. */
    void place(DropDown list, int columns) {
        list.spanning(columns);
        describe(list.control());
    }

    private void describe(Control control) {
        control.addFocusListener(FocusListener.focusGainedAdapter(event -> form.select()));
        control.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = label.getText();
            }

            @Override
            public void getDescription(AccessibleEvent event) {
                event.result = problems.text();
            }
        });
    }

    /** Adds the place for problems; to be called when all other controls of the row are there. */
    void placeProblems() {
        problems = new ProblemLine(form);
    }

    /** Gives the field another label than the feature's name. */
    public Field labelled(String text) {
        label.setText(text);
        return this;
    }

    /** Says more about the field when the mouse rests on its label. */
    public Field explained(String text) {
        label.setToolTipText(text);
        return this;
    }

    /** Returns the control that has the focus when the field is edited. */
    public abstract Control control();

    /** Shows the value. */
    abstract void display(Object value, Object inherited);

    /** Lets the user change the value, or not. */
    void enable(boolean editable) {
        control().setEnabled(editable);
    }

    /** Makes what is typed part of the document, as far as it can be read. */
    void commitDraft() {
        // most fields change the document at once
    }

    /** Another object is about to be shown. */
    void leave() {
        commitDraft();
    }

    /** Returns what is wrong with what is being typed; nothing if it is not, or nothing is. */
    Optional<InputProblem> inputProblem() {
        return Optional.empty();
    }

    boolean shows(EStructuralFeature other) {
        return feature == other;
    }

    boolean focus() {
        return control().setFocus();
    }

    final FieldForm form() {
        return form;
    }

    final EStructuralFeature feature() {
        return feature;
    }

    final Composite parent() {
        return form.parent();
    }

    final Optional<EObject> object() {
        return Optional.ofNullable(form.object());
    }

    final void commit(Object value) {
        object().ifPresent(object -> form.session().set(object, feature, value));
    }

    final void refresh() {
        display(object().filter(object -> object.eIsSet(feature)).map(object -> object.eGet(feature)).orElse(null),
                form.inherited(feature));
        refreshState();
        refreshProblems();
    }

    /** Shows again what the value amounts to, where other documents tell that. */
    void refreshMeaning() {
        // most fields show their value alone
    }

    final void refreshState() {
        enable(object().isPresent() && form.session().editable());
    }

    final void refreshProblems() {
        List<FoundProblem> found = form.problems(feature);
        problems.show(inputProblem().or(() -> found.stream().findFirst().map(InputProblem::of)).orElse(null));
    }
}
