/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.rules;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Consumer;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.forms.IManagedForm;
import org.eclipse.ui.forms.widgets.ExpandableComposite;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.eclipse.ui.forms.widgets.Section;
import org.ferrule.model.Features;
import org.ferrule.model.ModelPackage;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.edit.field.FieldForm;
import org.ferrule.ui.internal.rules.RuleTree.Group;
import org.ferrule.ui.look.ModelLabels;

/** The fields of one element of any class, made from what the Ecore says of the class. */
final class ElementDetails {

    private record Page(Composite control, FieldForm form) {
    }

    private final DocumentSession session;
    private final FormToolkit toolkit;
    private final Section section;
    private final ScrolledComposite scroller;
    private final Composite stack;
    private final StackLayout layout = new StackLayout();
    private final GroupTable group;
    private final Map<EClass, Page> pages = new HashMap<>();

    /**
     * Creates an empty panel.
     *
     * @param opened hears which element of a group is opened
     */
    ElementDetails(DocumentSession session, IManagedForm form, Composite parent, Consumer<EObject> opened) {
        this.session = session;
        this.toolkit = form.getToolkit();
        section = toolkit.createSection(parent, ExpandableComposite.TITLE_BAR);
        scroller = new ScrolledComposite(section, SWT.V_SCROLL);
        toolkit.adapt(scroller);
        scroller.setExpandHorizontal(true);
        scroller.setExpandVertical(true);
        stack = toolkit.createComposite(scroller);
        stack.setLayout(layout);
        scroller.setContent(stack);
        group = new GroupTable(toolkit, stack, opened);
        scroller.addListener(SWT.Resize, event -> resize());
        section.setClient(scroller);
    }

    void show(EObject object) {
        Page page = object == null ? null : pages.computeIfAbsent(object.eClass(), this::create);
        layout.topControl = page == null ? null : page.control;
        section.setText(object == null ? "" : ModelLabels.type(object.eClass()));
        if (page != null) {
            page.form.show(object);
        }
        stack.layout();
        resize();
    }

    /** Shows all elements of a group side by side. */
    void show(Group shown) {
        section.setText(ModelLabels.feature(shown.reference()));
        group.show(shown);
        layout.topControl = group.control();
        stack.layout();
        resize();
    }

    private void resize() {
        int width = scroller.getClientArea().width;
        scroller.setMinHeight(layout.topControl == null ? 0 : layout.topControl.computeSize(width, SWT.DEFAULT).y);
    }

    private Page create(EClass type) {
        Composite control = toolkit.createComposite(stack);
        FieldForm form = new FieldForm(session, toolkit, control);
        GridLayoutFactory.fillDefaults().numColumns(3).margins(8, 8).spacing(10, 7).applyTo(control);
        for (EStructuralFeature feature : Features.inDocumentOrder(type)) {
            if (feature instanceof EAttribute attribute && isShown(attribute)) {
                form.attribute(attribute);
            }
        }
        form.onReflow(this::resize);
        return new Page(control, form);
    }

    /** The format is none of the user's business. */
    private static boolean isShown(EAttribute attribute) {
        return attribute != ModelPackage.Literals.DOCUMENT__FORMAT
                && attribute != ModelPackage.Literals.DOCUMENT__VERSION;
    }

    boolean reveal(EObject object, EStructuralFeature feature) {
        Page page = pages.get(object.eClass());
        return page != null && page.form.reveal(object, feature);
    }
}
