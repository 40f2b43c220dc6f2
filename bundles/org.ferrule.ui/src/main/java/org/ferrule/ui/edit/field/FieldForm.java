/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.UnaryOperator;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.ferrule.model.ElementPath;
import org.ferrule.ui.Services;
import org.ferrule.ui.document.DocumentChange;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.document.SessionListener;
import org.ferrule.ui.edit.EditorSelection;
import org.ferrule.ui.look.ModelLabels;
import org.ferrule.ui.problem.FoundProblem;
import org.ferrule.ui.problem.ProblemBoard;

/**
 * The fields of one object, one below the other: label, control and, to the right, what the text amounts to; a problem
 * stands below its field. The fields follow the document and show another object when told to.
 *
 * <pre>
 * FieldForm form = new FieldForm(session, toolkit, client);
 * form.text(DEVICE_PARTS__NAME);
 * form.dimension(DEVICE_PARTS__EFFECTIVE_LENGTH);
 * form.show(device, line);
 * </pre>
 */
public final class FieldForm {

    private static final int COLUMNS = 3;

    private final DocumentSession session;
    private final FormToolkit toolkit;
    private final Composite parent;
    private final List<Field> fields = new ArrayList<>();
    private final SessionListener follower = new Follower();
    private final ProblemBoard board = Services.get(ProblemBoard.class);

    private Runnable reflow = () -> {
    };
    private EObject object;
    private EObject inherited;

    /**
     * Creates an empty form.
     *
     * @param parent where the fields go; gets a layout of three columns
     */
    public FieldForm(DocumentSession session, FormToolkit toolkit, Composite parent) {
        this.session = session;
        this.toolkit = toolkit;
        this.parent = parent;
        GridLayout layout = new GridLayout(COLUMNS, false);
        layout.horizontalSpacing = 10;
        layout.verticalSpacing = 6;
        parent.setLayout(layout);
        session.addListener(follower);
        parent.addDisposeListener(event -> session.removeListener(follower));
    }

    /** Adds a field for a dimension, a pressure or an offset. */
    public DimensionField dimension(EAttribute feature) {
        return add(new DimensionField(this, feature));
    }

    /** Adds a field for a text or a number. */
    public TextField text(EAttribute feature) {
        return add(new TextField(this, feature, false));
    }

    /**
     * Adds a field for the id of something that is not in the document.
     *
     * @param names returns the name of what has an id, or an empty text; it stands beside the field
     */
    public NamedField named(EAttribute feature, UnaryOperator<String> names) {
        return add(new NamedField(this, feature, names));
    }

    /** Adds a field of several lines for a text. */
    public TextField longText(EAttribute feature) {
        return add(new TextField(this, feature, true));
    }

    /** Adds a field for one word out of an enumeration. */
    public ChoiceField choice(EAttribute feature) {
        return add(new ChoiceField(this, feature));
    }

    /** Adds a field for any number of words out of an enumeration, or of texts. */
    public ChoicesField choices(EAttribute feature) {
        return add(new ChoicesField(this, feature));
    }

    /** Adds a field for yes or no. */
    public FlagField flag(EAttribute feature) {
        return add(new FlagField(this, feature));
    }

    /** Adds a field for the source of what the object states, with its page. */
    public SourceField source() {
        return add(new SourceField(this));
    }

    /**
     * Adds a field for an attribute that holds the name of something else in the document.
     *
     * @param choices what may be named, for the object that is shown: names and, for each, what is shown for it
     */
    public ReferenceField reference(EAttribute feature, Function<EObject, Map<String, String>> choices) {
        return add(new ReferenceField(this, feature, choices));
    }

    /**
     * Adds a field for an attribute, as its type demands; the label explains itself. The page comes with the source, so
     * it gets no field of its own.
     */
    public void attribute(EAttribute feature) {
        FieldChoice.fieldFor(this, feature).ifPresent(field -> field.explained(ModelLabels.description(feature)));
    }

    private <F extends Field> F add(F field) {
        fields.add(field);
        field.refresh();
        return field;
    }

    /** Shows the object; null shows empty fields that cannot be changed. */
    public void show(EObject shown) {
        show(shown, null);
    }

    /**
     * Shows the object.
     *
     * @param source an object that states what this one leaves out, such as the line of a device, or null; its values
     *            are shown as hints
     */
    public void show(EObject shown, EObject source) {
        boolean other = shown != object;
        if (other) {
            fields.forEach(Field::leave);
        }
        object = shown;
        inherited = source;
        refresh();
        if (other && parent.isVisible()) {
            select();
        }
    }

    /** What the fields show is what the editor is about, when it is shown and when a field takes the focus. */
    void select() {
        if (object != null) {
            EditorSelection.of(parent).ifPresent(selection -> selection.select(object));
        }
    }

    /** Returns the object that is shown, or null. */
    public EObject object() {
        return object;
    }

    /** Sets what is to be done when a field needs more or less room than before. */
    public void onReflow(Runnable action) {
        reflow = action;
    }

    /** Shows again what the ids of other documents stand for. */
    public void refreshMeanings() {
        fields.forEach(Field::refreshMeaning);
    }

    /** Puts the cursor into the field of the feature, if the object is shown and there is such a field. */
    public boolean reveal(EObject wanted, EStructuralFeature feature) {
        return wanted == object && fields.stream().filter(field -> field.shows(feature)).findFirst()
                .map(Field::focus).orElse(false);
    }

    /** Puts the cursor into the first field. */
    public boolean setFocus() {
        return !fields.isEmpty() && fields.get(0).focus();
    }

    DocumentSession session() {
        return session;
    }

    FormToolkit toolkit() {
        return toolkit;
    }

    Composite parent() {
        return parent;
    }

    /** Returns what the object inherits for the feature, or null. */
    Object inherited(EStructuralFeature feature) {
        boolean known = inherited != null && inherited.eClass().getEAllStructuralFeatures().contains(feature);
        return known && inherited.eIsSet(feature) ? inherited.eGet(feature) : null;
    }

    List<FoundProblem> problems(EStructuralFeature feature) {
        List<FoundProblem> named = object == null ? List.of() : board.of(session.file()).stream()
                .filter(problem -> problem.feature().equals(feature.getName())).toList();
        String path = named.isEmpty() ? "" : ElementPath.of(object);
        return named.stream().filter(problem -> problem.path().equals(path)).toList();
    }

    void resized() {
        parent.layout(true, true);
        reflow.run();
    }

    private void refresh() {
        fields.forEach(Field::refresh);
    }

    private final class Follower implements SessionListener {

        @Override
        public void documentChanged(DocumentChange change) {
            if (object != null && (change.concerns(object) || inherited != null && change.concerns(inherited))) {
                refresh();
            }
        }

        @Override
        public void stateChanged() {
            fields.forEach(Field::refreshState);
        }

        @Override
        public void aboutToSave() {
            fields.forEach(Field::commitDraft);
        }

        @Override
        public void problemsChanged() {
            fields.forEach(Field::refreshProblems);
        }
    }
}
