/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit.section;

import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.forms.IFormColors;
import org.eclipse.ui.forms.IManagedForm;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.edit.field.FieldForm;

/** An object that may stand in a feature: it can be stated, with its fields, and left out again. */
public final class OptionalBlock implements PartBlock {

    private final DocumentSession session;
    private final IManagedForm managed;
    private final EReference reference;
    private final String heading;
    private final Button stating;
    private final Composite fields;
    private final FieldForm form;
    private EObject object;

    /**
     * Creates a block.
     *
     * @param heading what stands above it
     * @param adding adds the fields
     */
    public OptionalBlock(DocumentSession session, IManagedForm managed, Composite parent, String heading,
            EReference reference, Consumer<FieldForm> adding) {
        this.session = session;
        this.managed = managed;
        this.reference = reference;
        this.heading = heading;
        FormToolkit toolkit = managed.getToolkit();
        Composite head = toolkit.createComposite(parent);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(head);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(1, 3).applyTo(head);
        Label label = toolkit.createLabel(head, heading);
        label.setForeground(toolkit.getColors().getColor(IFormColors.TITLE));
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).applyTo(label);
        stating = toolkit.createButton(head, "", SWT.PUSH);
        stating.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> state()));
        fields = toolkit.createComposite(parent);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(fields);
        form = new FieldForm(session, toolkit, fields);
        adding.accept(form);
        form.onReflow(() -> Reflow.around(managed, fields));
    }

    private Optional<EObject> stated() {
        return Optional.ofNullable(object).map(o -> (EObject) o.eGet(reference));
    }

    private void state() {
        session.set(object, reference, stated().isPresent() ? null : EcoreUtil.create(reference.getEReferenceType()));
        show(object);
    }

    @Override
    public void show(EObject shown) {
        object = shown;
        EObject now = stated().orElse(null);
        if (form.object() != now) {
            form.show(now);
        } else {
            form.refreshMeanings();
        }
        stating.setEnabled(object != null && session.editable());
        boolean there = now != null;
        GridData data = (GridData) fields.getLayoutData();
        if (data.exclude == there || stating.getText().isEmpty()) {
            stating.setText(there ? "Leave out" : "Fill in");
            stating.setToolTipText(heading);
            stating.requestLayout();
            data.exclude = !there;
            fields.setVisible(there);
            Reflow.around(managed, fields);
        }
    }

    @Override
    public boolean reveal(EObject wanted, EStructuralFeature feature) {
        if (wanted == object && feature == reference
                || feature == null && stated().filter(wanted::equals).isPresent()) {
            return stating.setFocus();
        }
        return form.reveal(wanted, feature);
    }
}
