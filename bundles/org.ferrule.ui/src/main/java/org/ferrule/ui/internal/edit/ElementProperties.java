/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.edit;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.ui.views.properties.IPropertyDescriptor;
import org.eclipse.ui.views.properties.IPropertySource;
import org.eclipse.ui.views.properties.PropertyDescriptor;
import org.eclipse.ui.views.properties.TextPropertyDescriptor;
import org.ferrule.model.Features;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.look.ModelLabels;

/** The attributes of an object, as they are written in its document. Each change is a command that can be undone. */
public final class ElementProperties implements IPropertySource {

    private final DocumentSession session;
    private final EObject object;

    /** Creates the properties of an object of the session's document. */
    public ElementProperties(DocumentSession session, EObject object) {
        this.session = session;
        this.object = object;
    }

    @Override
    public Object getEditableValue() {
        return object;
    }

    @Override
    public IPropertyDescriptor[] getPropertyDescriptors() {
        List<IPropertyDescriptor> descriptors = new ArrayList<>();
        for (EStructuralFeature feature : Features.inDocumentOrder(object.eClass())) {
            if (feature instanceof EAttribute attribute) {
                descriptors.add(descriptor(attribute));
            }
        }
        return descriptors.toArray(IPropertyDescriptor[]::new);
    }

    private PropertyDescriptor descriptor(EAttribute attribute) {
        boolean editable = session.editable() && !attribute.isMany() && attribute.isChangeable();
        PropertyDescriptor descriptor = editable ? new TextPropertyDescriptor(attribute, ModelLabels.feature(attribute))
                : new PropertyDescriptor(attribute, ModelLabels.feature(attribute));
        descriptor.setCategory(ModelLabels.type(object.eClass()));
        descriptor.setDescription(ModelLabels.description(attribute));
        descriptor.setValidator(value -> problem(attribute, (String) value));
        return descriptor;
    }

    private static String problem(EAttribute attribute, String text) {
        try {
            value(attribute, text);
            return null;
        } catch (IllegalArgumentException e) {
            return e.getMessage();
        }
    }

    private static Object value(EAttribute attribute, String text) {
        return text.isBlank() ? null : EcoreUtil.createFromString(attribute.getEAttributeType(), text.strip());
    }

    @Override
    public Object getPropertyValue(Object id) {
        EAttribute attribute = (EAttribute) id;
        Object value = object.eIsSet(attribute) ? object.eGet(attribute) : null;
        if (value instanceof List<?> many) {
            return String.join(", ", many.stream().map(one -> text(attribute, one)).toList());
        }
        return value == null ? "" : text(attribute, value);
    }

    private static String text(EAttribute attribute, Object value) {
        return EcoreUtil.convertToString(attribute.getEAttributeType(), value);
    }

    @Override
    public boolean isPropertySet(Object id) {
        return object.eIsSet((EAttribute) id);
    }

    @Override
    public void resetPropertyValue(Object id) {
        session.set(object, (EAttribute) id, null);
    }

    @Override
    public void setPropertyValue(Object id, Object text) {
        EAttribute attribute = (EAttribute) id;
        if (!text.equals(getPropertyValue(id))) {
            session.set(object, attribute, value(attribute, (String) text));
        }
    }
}
