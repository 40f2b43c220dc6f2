/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.revision;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.ferrule.engine.revision.Difference.Kind;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.Features;
import org.ferrule.model.ModelPackage.Literals;

/**
 * Compares two revisions of a library as their documents state them: a value of a line that changes is told once, at the
 * line. Devices, lines, bench results and sources are the same if their ids are, sections and lumens if their names
 * are. The order of lists is no difference.
 */
public final class LibraryComparison {

    private final List<Difference> differences = new ArrayList<>();

    private LibraryComparison() {
    }

    /** Returns what has changed, in the order of the later document; what went stands behind what is still there. */
    public static List<Difference> of(DeviceLibrary before, DeviceLibrary after) {
        LibraryComparison comparison = new LibraryComparison();
        comparison.compare(before, after, Optional.empty());
        return List.copyOf(comparison.differences);
    }

    /** Compares counterparts; without an entry they are the documents, whose parts are the entries. */
    private void compare(EObject before, EObject after, Optional<EObject> entry) {
        for (EStructuralFeature feature : Features.inDocumentOrder(after.eClass())) {
            if (feature instanceof EReference reference) {
                compareParts(before, after, reference, entry);
            } else if (feature != Literals.DOCUMENT__FORMAT && feature != Literals.DOCUMENT__VERSION
                    && differs(before, after, (EAttribute) feature)) {
                differences.add(new Difference(Kind.CHANGED, entry.orElse(after), before, after, feature,
                        Optional.empty()));
            }
        }
    }

    private static boolean differs(EObject before, EObject after, EAttribute attribute) {
        boolean stated = before.eIsSet(attribute);
        return stated != after.eIsSet(attribute) || stated && !Objects.equals(value(before, attribute),
                value(after, attribute));
    }

    private static Object value(EObject object, EAttribute attribute) {
        return object.eGet(attribute) instanceof List<?> list ? List.copyOf(list) : object.eGet(attribute);
    }

    private void compareParts(EObject before, EObject after, EReference reference, Optional<EObject> entry) {
        Counterparts parts = new Counterparts(parts(before, reference), parts(after, reference));
        parts.pairs().forEach((was, is) -> compare(was, is, Optional.of(entry.orElse(is))));
        parts.added().forEach(part -> differences.add(new Difference(Kind.ADDED, entry.orElse(part), before, after,
                reference, Optional.of(part))));
        parts.removed().forEach(part -> differences.add(new Difference(Kind.REMOVED, entry.orElse(part), before,
                after, reference, Optional.of(part))));
    }

    private static List<EObject> parts(EObject object, EReference reference) {
        Object value = object.eGet(reference);
        return value instanceof List<?> list ? list.stream().map(EObject.class::cast).toList()
                : value == null ? List.of() : List.of((EObject) value);
    }
}
