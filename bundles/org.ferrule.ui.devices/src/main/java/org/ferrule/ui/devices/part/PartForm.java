/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.widgets.Composite;
import org.ferrule.model.Features;
import org.ferrule.model.ModelPackage;
import org.ferrule.ui.edit.field.FieldForm;
import org.ferrule.ui.look.ModelLabels;

/** The fields of one object, and below them the parts of it. Values that it inherits are hints in its fields. */
public final class PartForm implements PartView {

    private static final Set<EAttribute> OF_THE_FILE = Set.of(ModelPackage.Literals.DOCUMENT__FORMAT,
            ModelPackage.Literals.DOCUMENT__VERSION);

    private final Composite root;
    private final FieldForm fields;
    private final InheritedBar bar;
    private final List<PartView> children = new ArrayList<>();
    private Shown shown;

    /**
     * Creates a form that shows nothing yet.
     *
     * @param type the class of what will be shown
     * @param layouts the parts to show below the fields
     */
    public PartForm(EditContext context, Composite parent, EClass type, List<PartLayout> layouts) {
        root = context.toolkit().createComposite(parent);
        GridLayoutFactory.fillDefaults().spacing(0, 6).applyTo(root);
        bar = new InheritedBar(context, root);
        Composite client = context.toolkit().createComposite(root);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(client);
        fields = new FieldForm(context.session(), context.toolkit(), client);
        fields.onReflow(context.reflow());
        addFields(type);
        layouts.forEach(layout -> children.add(child(context, layout)));
    }

    private void addFields(EClass type) {
        for (EStructuralFeature feature : Features.inDocumentOrder(type)) {
            if (feature instanceof EAttribute attribute && !OF_THE_FILE.contains(attribute)) {
                addField(attribute);
            }
        }
    }

    private void addField(EAttribute attribute) {
        Function<EObject, Map<String, String>> choices = Choices.of(attribute);
        if (choices == null) {
            fields.attribute(attribute);
        } else {
            fields.reference(attribute, choices).explained(ModelLabels.description(attribute));
        }
    }

    private PartView child(EditContext context, PartLayout layout) {
        if (layout.feature() == ModelPackage.Literals.BALLOON__COMPLIANCE) {
            return new ComplianceView(context, root, layout);
        }
        return layout.columns().isEmpty() ? new SinglePart(context, root, layout)
                : PartList.below(context, root, layout);
    }

    @Override
    public void show(Shown object) {
        shown = object;
        bar.show(object);
        fields.show(object == null ? null : object.own().orElse(null), object == null ? null : object.hints());
        children.forEach(child -> child.show(object));
    }

    @Override
    public boolean reveal(EObject object, EStructuralFeature feature) {
        if (shown == null || !EcoreUtil.isAncestor(shown.stater(), object)) {
            return false;
        }
        return object == shown.stater() && (feature == null || feature instanceof EReference)
                || fields.reveal(object, feature)
                || children.stream().anyMatch(child -> child.reveal(object, feature));
    }

    /** Puts the cursor into the first field. */
    void focus() {
        if (shown != null && shown.own().isPresent()) {
            EAttribute first = Keys.of(shown.complete().eClass());
            fields.reveal(shown.own().get(), first == null ? firstAttribute() : first);
        }
    }

    private EStructuralFeature firstAttribute() {
        return Features.inDocumentOrder(shown.complete().eClass()).get(0);
    }

    /** Returns the control to lay out. */
    public Composite control() {
        return root;
    }
}
