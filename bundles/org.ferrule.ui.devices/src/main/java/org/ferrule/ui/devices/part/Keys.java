/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.part;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.ferrule.model.DeviceParts;
import org.ferrule.model.Features;

/** The names by which objects of a document refer to each other. */
public final class Keys {

    private Keys() {
    }

    /** Returns the attribute by which objects of the class are named, or null. A lumen section's id is a diameter. */
    static EAttribute of(EClass type) {
        return Stream.of("id", "name").map(type::getEStructuralFeature).filter(Keys::isText).map(EAttribute.class::cast)
                .findFirst().orElse(null);
    }

    private static boolean isText(EStructuralFeature feature) {
        return feature instanceof EAttribute attribute
                && attribute.getEAttributeType().getInstanceClass() == String.class;
    }

    /** Returns the objects of the same document, or of the same device for its parts, that name the object. */
    public static List<EObject> naming(EObject object) {
        EAttribute key = of(object.eClass());
        Object name = key == null ? null : object.eGet(key);
        List<EObject> found = new ArrayList<>();
        EObject scope = object.eContainer();
        if (name != null && (scope instanceof DeviceParts || scope.eContainer() == null)) {
            Iterator<EObject> all = scope.eAllContents();
            all.forEachRemaining(other -> addIfNaming(found, other, object.eClass(), name));
        }
        return found;
    }

    private static void addIfNaming(List<EObject> found, EObject other, EClass type, Object name) {
        boolean names = other.eClass().getEAllAttributes().stream()
                .filter(attribute -> Features.annotation(attribute, "refers").filter(type.getName()::equals)
                        .isPresent())
                .anyMatch(attribute -> name.equals(other.eGet(attribute)));
        if (names) {
            found.add(other);
        }
    }
}
