/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

import org.eclipse.emf.ecore.EAnnotation;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EModelElement;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.ferrule.quantity.FigureKind;

/** What the Ecore says about features beyond their types: their order in documents and what their figures mean. */
public final class Features {

    private static final String ANNOTATION = "https://ferrule.invalid/annotation/1";
    private static final String POSITION = "position";
    private static final String FIRST = "first";
    private static final String AFTER = "after ";

    private static final Set<EClassifier> FIGURES = Set.of(ModelPackage.Literals.DIMENSION,
            ModelPackage.Literals.PRESSURE, ModelPackage.Literals.OFFSET);

    /** The model does not change while the program runs. */
    private static final Map<EClass, List<EStructuralFeature>> ORDERS = new ConcurrentHashMap<>();
    private static final Map<EModelElement, Map<String, String>> ANNOTATIONS = new ConcurrentHashMap<>();
    private static final Map<Asked, Map<EAttribute, String>> ANNOTATED = new ConcurrentHashMap<>();

    private record Asked(EClass type, String key) {
    }

    private Features() {
    }

    /**
     * Returns the features that are keys of a JSON object, in the order in which they are written: as the Ecore lists
     * them, but source, page and note last, a feature that says so first, and one that names its predecessor right after
     * it.
     */
    public static List<EStructuralFeature> inDocumentOrder(EClass type) {
        return ORDERS.computeIfAbsent(type, Features::order);
    }

    private static List<EStructuralFeature> order(EClass type) {
        List<EStructuralFeature> ordered = new ArrayList<>();
        List<EStructuralFeature> last = new ArrayList<>();
        for (EStructuralFeature feature : type.getEAllStructuralFeatures()) {
            if (annotation(feature.getEContainingClass(), POSITION).isPresent()) {
                last.add(feature);
            } else if (feature != ModelPackage.Literals.ELEMENT__EXTRAS) {
                ordered.add(place(feature, ordered), feature);
            }
        }
        ordered.addAll(last);
        return List.copyOf(ordered);
    }

    /** Returns what kind of figure a dimension of this feature is, for plausibility; nothing if it is not known. */
    public static Optional<FigureKind> figureKind(EStructuralFeature feature) {
        return annotation(feature, "figure").map(FigureKind::valueOf);
    }

    /** Tells whether the values of a feature are dimensions, pressures or offsets. */
    public static boolean isFigure(EStructuralFeature feature) {
        return FIGURES.contains(feature.getEType());
    }

    /**
     * Returns what the Ecore's own annotation says.
     *
     * @param key one of figure, refers, position, text, label, format, suffix
     */
    public static Optional<String> annotation(EModelElement element, String key) {
        return Optional.ofNullable(ANNOTATIONS.computeIfAbsent(element, Features::details).get(key));
    }

    private static Map<String, String> details(EModelElement element) {
        EAnnotation annotation = element.getEAnnotation(ANNOTATION);
        return annotation == null ? Map.of() : Map.copyOf(annotation.getDetails().map());
    }

    /** Returns the attributes of a class of which the Ecore's own annotation says something, with what it says. */
    public static Map<EAttribute, String> annotated(EClass type, String key) {
        return ANNOTATED.computeIfAbsent(new Asked(type, key), asked -> {
            Map<EAttribute, String> found = new LinkedHashMap<>();
            type.getEAllAttributes().forEach(attribute -> annotation(attribute, key)
                    .ifPresent(value -> found.put(attribute, value)));
            return Collections.unmodifiableMap(found);
        });
    }

    private static int place(EStructuralFeature feature, List<EStructuralFeature> ordered) {
        String position = annotation(feature, POSITION).orElse("");
        if (position.equals(FIRST)) {
            return 0;
        }
        String predecessor = position.startsWith(AFTER) ? position.substring(AFTER.length()) : "";
        for (int i = 0; i < ordered.size(); i++) {
            if (ordered.get(i).getName().equals(predecessor)) {
                return i + 1;
            }
        }
        return ordered.size();
    }
}
