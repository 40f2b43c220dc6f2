/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit.contents;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.forms.IManagedForm;
import org.eclipse.ui.forms.widgets.ExpandableComposite;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.eclipse.ui.forms.widgets.Section;
import org.ferrule.model.Features;
import org.ferrule.model.ModelPackage;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.edit.field.FieldForm;
import org.ferrule.ui.look.ModelLabels;

/** The fields of one element of any class, made from what the Ecore says of the class. */
final class ElementDetails {

    /** The fields of a class, and those of the parts that every object of it has. */
    private record Page(Composite control, FieldForm form, Map<EReference, RequiredPart> parts) {

        void show(EObject object) {
            form.show(object);
            parts.values().forEach(part -> part.show(object));
        }

        boolean reveal(EObject object, EStructuralFeature feature) {
            return form.reveal(object, feature)
                    || parts.values().stream().anyMatch(part -> part.reveal(object, feature));
        }
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
        scroller.setShowFocusedControl(true);
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
            page.show(object);
        }
        stack.layout();
        resize();
    }

    /** Shows elements of a group side by side. */
    void show(Group shown, List<EObject> elements) {
        String name = ModelLabels.feature(shown.reference());
        boolean all = elements.size() == shown.members().size();
        section.setText(all ? name : name + ": " + elements.size() + " selected");
        group.show(shown.reference(), elements);
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
        GridLayoutFactory.fillDefaults().margins(8, 8).spacing(0, 4).applyTo(control);
        FieldForm form = form(control, type);
        Map<EReference, RequiredPart> parts = new LinkedHashMap<>();
        for (EReference part : parts(type)) {
            Composite head = toolkit.createComposite(control);
            parts.put(part, new RequiredPart(session, toolkit, head, part, form(control, part.getEReferenceType())));
        }
        return new Page(control, form, parts);
    }

    private FieldForm form(Composite control, EClass type) {
        Composite fields = toolkit.createComposite(control);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(fields);
        FieldForm form = new FieldForm(session, toolkit, fields);
        for (EStructuralFeature feature : Features.inDocumentOrder(type)) {
            if (feature instanceof EAttribute attribute && isShown(attribute)) {
                form.attribute(attribute);
            }
        }
        form.onReflow(this::resize);
        return form;
    }

    /** Returns the single parts without which no object of the class is complete. */
    private static List<EReference> parts(EClass type) {
        return type.getEAllContainments().stream().filter(part -> !part.isMany() && part.isRequired()).toList();
    }

    /** Gives an object the parts without which it is not complete. */
    static EObject complete(EObject made) {
        parts(made.eClass()).forEach(part -> made.eSet(part, EcoreUtil.create(part.getEReferenceType())));
        return made;
    }

    /** The format is none of the user's business. */
    private static boolean isShown(EAttribute attribute) {
        return attribute != ModelPackage.Literals.DOCUMENT__FORMAT
                && attribute != ModelPackage.Literals.DOCUMENT__VERSION;
    }

    /** A single part is shown with what it is a part of. */
    private static EClass shownClass(EObject object) {
        return object.eContainmentFeature() != null && !object.eContainmentFeature().isMany()
                ? object.eContainer().eClass() : object.eClass();
    }

    boolean reveal(EObject object, EStructuralFeature feature) {
        Page page = pages.get(shownClass(object));
        boolean found = page != null && page.reveal(object, feature);
        if (found) {
            stack.getDisplay().asyncExec(this::scrollToFocus);
        }
        return found;
    }

    /** Once more when all is laid out: what got the focus may have moved since. */
    private void scrollToFocus() {
        if (!scroller.isDisposed()) {
            Control focused = scroller.getDisplay().getFocusControl();
            Control parent = focused;
            while (parent != null && parent != stack) {
                parent = parent.getParent();
            }
            if (parent == stack) {
                scroller.showControl(focused);
            }
        }
    }
}
