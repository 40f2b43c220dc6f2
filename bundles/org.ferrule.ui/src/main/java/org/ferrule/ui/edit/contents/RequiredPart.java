/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit.contents;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.edit.field.FieldForm;
import org.ferrule.ui.look.ModelLabels;

/** A part without which an object is not complete, with its fields. Where a file lacks it, it can be stated. */
final class RequiredPart {

    private final DocumentSession session;
    private final EReference part;
    private final FieldForm fields;
    private final Button stating;
    private EObject object;

    /**
     * Creates the heading of the part.
     *
     * @param head where the heading goes
     * @param fields the fields of the part
     */
    RequiredPart(DocumentSession session, FormToolkit toolkit, Composite head, EReference part, FieldForm fields) {
        this.session = session;
        this.part = part;
        this.fields = fields;
        GridLayoutFactory.fillDefaults().numColumns(2).applyTo(head);
        Label title = toolkit.createLabel(head, ModelLabels.feature(part));
        title.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
        title.setToolTipText(ModelLabels.description(part));
        GridDataFactory.swtDefaults().applyTo(title);
        stating = toolkit.createButton(head, "Fill in", SWT.PUSH);
        stating.setToolTipText("It is missing: " + ModelLabels.description(part));
        stating.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> state()));
    }

    private void state() {
        session.set(object, part, EcoreUtil.create(part.getEReferenceType()));
        show(object);
        fields.setFocus();
    }

    void show(EObject owner) {
        object = owner;
        EObject stated = (EObject) owner.eGet(part);
        fields.show(stated);
        stating.setVisible(stated == null);
        stating.setEnabled(session.editable());
    }

    /** Shows a feature of the part, or the part itself where it, or that it is missing, is meant. */
    boolean reveal(EObject wanted, EStructuralFeature feature) {
        if (wanted == object && feature == part) {
            return object.eGet(part) == null ? stating.setFocus() : fields.setFocus();
        }
        return fields.reveal(wanted, feature);
    }
}
