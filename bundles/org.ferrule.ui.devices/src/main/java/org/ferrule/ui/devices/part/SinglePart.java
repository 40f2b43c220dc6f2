/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.part;

import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.ferrule.ui.look.ModelLabels;

/** A part that there is once or not at all, such as a balloon: its form, or a button to add it. */
final class SinglePart implements PartView {

    private final EditContext context;
    private final PartLayout layout;
    private final Composite root;
    private final Button button;
    private PartForm form;
    private Shown holder;
    private Shown part;

    SinglePart(EditContext context, Composite parent, PartLayout layout) {
        this.context = context;
        this.layout = layout;
        root = context.toolkit().createComposite(parent);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(0, 2).spacing(10, 4).applyTo(root);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(root);
        Label title = context.toolkit().createLabel(root, ModelLabels.feature(feature()));
        title.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
        title.setToolTipText(ModelLabels.description(feature()));
        GridDataFactory.swtDefaults().hint(140, SWT.DEFAULT).applyTo(title);
        button = context.toolkit().createButton(root, "Add", SWT.PUSH);
        GridDataFactory.swtDefaults().hint(90, SWT.DEFAULT).applyTo(button);
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> addOrDelete()));
    }

    private EReference feature() {
        return layout.feature();
    }

    private void addOrDelete() {
        PartEdits edits = new PartEdits(context.session());
        if (part == null) {
            edits.add(holder, feature());
        } else {
            part.own().ifPresent(own -> edits.delete(List.of(own)));
        }
    }

    @Override
    public void show(Shown newHolder) {
        holder = newHolder;
        part = holder == null ? null : holder.parts(feature()).stream().findFirst().orElse(null);
        button.setText(part == null ? "Add" : "Delete");
        button.setEnabled(context.session().editable() && holder != null && (part == null || !part.isInherited()));
        if (part != null && form == null) {
            form = new PartForm(context, root, feature().getEReferenceType(), layout.children());
            GridDataFactory.fillDefaults().grab(true, false).span(2, 1).indent(12, 0).applyTo(form.control());
            context.reflow().run();
        }
        showForm();
    }

    private void showForm() {
        if (form != null) {
            form.show(part);
            boolean needed = part != null;
            if (needed != form.control().getVisible()) {
                form.control().setVisible(needed);
                ((GridData) form.control().getLayoutData()).exclude = !needed;
                context.reflow().run();
            }
        }
    }

    @Override
    public boolean reveal(EObject object, EStructuralFeature feature) {
        return part != null && form.reveal(object, feature);
    }
}
