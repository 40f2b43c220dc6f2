/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.model;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * Names an object of a document so that it is found again in another copy of the document: by the ids and names on the
 * way, such as {@code devices[gx-6f]/lumens[main]/sections[0]}, or by its index where it has neither, or not for itself
 * alone. The document itself has the empty path.
 */
public final class ElementPath {

    private static final List<String> KEYS = List.of("id", "name");

    private ElementPath() {
    }

    /** Returns the path of the object in its document; of many objects {@link ElementPaths} tells it quicker. */
    public static String of(EObject object) {
        return new ElementPaths().of(object);
    }

    /** Returns the object at the path, or nothing if there is none any more. */
    public static Optional<EObject> resolve(EObject document, String path) {
        Optional<EObject> here = Optional.of(document);
        for (String step : path.isEmpty() ? List.<String>of() : steps(path)) {
            here = here.flatMap(object -> child(object, step));
        }
        return here;
    }

    /** Attributes named id are ids only where they are texts: a lumen section's is its inner diameter. */
    static String ownKey(EObject object) {
        return KEYS.stream().map(object.eClass()::getEStructuralFeature).filter(Objects::nonNull).map(object::eGet)
                .filter(String.class::isInstance).map(String.class::cast).findFirst().orElse(null);
    }

    private static List<String> steps(String path) {
        return List.of(path.split("/"));
    }

    private static Optional<EObject> child(EObject object, String step) {
        int bracket = step.indexOf('[');
        EStructuralFeature feature = object.eClass()
                .getEStructuralFeature(bracket < 0 ? step : step.substring(0, bracket));
        if (feature == null) {
            return Optional.empty();
        }
        Object value = object.eGet(feature);
        return bracket < 0 ? Optional.ofNullable((EObject) value)
                : member((List<?>) value, step.substring(bracket + 1, step.length() - 1));
    }

    private static Optional<EObject> member(List<?> values, String key) {
        if (!key.chars().allMatch(Character::isDigit)) {
            return values.stream().map(EObject.class::cast).filter(o -> Objects.equals(ownKey(o), key)).findFirst();
        }
        int index = Integer.parseInt(key);
        return index < values.size() ? Optional.of((EObject) values.get(index)) : Optional.empty();
    }
}
