/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import java.util.List;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * A short notation for objects in tests: {@code sections.0.od=6 Fr; sections.1=; kinds=snare}. What stands on the way
 * is created; a path that ends in = alone makes an empty object.
 */
public final class Notation {

    private Notation() {
    }

    /** Sets values of an object. */
    public static <T extends EObject> T set(T object, String notation) {
        for (String assignment : notation.split(";")) {
            if (!assignment.isBlank()) {
                int equals = assignment.indexOf('=');
                set(object, assignment.substring(0, equals).strip().split("\\."), 0,
                        assignment.substring(equals + 1).strip());
            }
        }
        return object;
    }

    /** Returns the path of a feature of a part in the whole, in the same notation. */
    public static String path(EObject whole, EObject part, EStructuralFeature feature) {
        String own = feature == null ? "" : feature.getName();
        if (part == whole) {
            return own;
        }
        EReference holder = part.eContainmentFeature();
        String index = holder.isMany() ? "." + list(part.eContainer(), holder).indexOf(part) : "";
        String path = path(whole, part.eContainer(), holder) + index;
        return own.isEmpty() ? path : path + "." + own;
    }

    private static void set(EObject object, String[] path, int at, String value) {
        EStructuralFeature feature = feature(object.eClass(), path[at]);
        if (feature instanceof EAttribute attribute) {
            Object converted = EcoreUtil.createFromString(attribute.getEAttributeType(), value);
            if (attribute.isMany()) {
                list(object, attribute).add(converted);
            } else {
                object.eSet(attribute, converted);
            }
            return;
        }
        int next = feature.isMany() ? at + 2 : at + 1;
        EObject child = child(object, (EReference) feature, feature.isMany() ? Integer.parseInt(path[at + 1]) : 0);
        if (next < path.length) {
            set(child, path, next, value);
        }
    }

    private static EObject child(EObject object, EReference reference, int index) {
        if (reference.isMany()) {
            List<Object> children = list(object, reference);
            while (children.size() <= index) {
                children.add(EcoreUtil.create(reference.getEReferenceType()));
            }
            return (EObject) children.get(index);
        }
        if (object.eGet(reference) == null) {
            object.eSet(reference, EcoreUtil.create(reference.getEReferenceType()));
        }
        return (EObject) object.eGet(reference);
    }

    private static EStructuralFeature feature(EClass type, String name) {
        EStructuralFeature feature = type.getEStructuralFeature(name);
        if (feature == null) {
            throw new IllegalArgumentException(type.getName() + " has no " + name);
        }
        return feature;
    }

    @SuppressWarnings("unchecked")
    private static List<Object> list(EObject object, EStructuralFeature feature) {
        return (List<Object>) object.eGet(feature);
    }
}
