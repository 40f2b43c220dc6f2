/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.look;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.ferrule.model.Marker;

/** Says which part of a document is meant, in words such as {@code marker at 3 mm from the tip of Wire A}. */
public final class ElementWords {

    private static final List<String> NAMES = List.of("name", "id");

    private ElementWords() {
    }

    /** Returns the words; none for a document as a whole. */
    public static String of(EObject element) {
        List<String> steps = new ArrayList<>();
        for (EObject step = element; step.eContainer() != null; step = step.eContainer()) {
            steps.add(step(step));
        }
        return String.join(" of ", steps);
    }

    private static String step(EObject element) {
        for (String name : NAMES) {
            EStructuralFeature feature = element.eClass().getEStructuralFeature(name);
            if (feature != null && element.eGet(feature) instanceof String text && !text.isBlank()) {
                return text;
            }
        }
        String type = ModelLabels.type(element.eClass()).toLowerCase(Locale.ENGLISH);
        return element instanceof Marker marker && marker.getAt() != null
                ? type + " at " + marker.getAt() + " from the tip" : type + number(element);
    }

    /** What has no name is told from its like by its place. */
    private static String number(EObject element) {
        if (!element.eContainmentFeature().isMany()) {
            return "";
        }
        List<?> all = (List<?>) element.eContainer().eGet(element.eContainmentFeature());
        return all.size() == 1 ? "" : " " + (all.indexOf(element) + 1);
    }
}
