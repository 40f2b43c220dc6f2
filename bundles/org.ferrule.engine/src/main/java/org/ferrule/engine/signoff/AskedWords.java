/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.signoff;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.ferrule.model.FitChart;
import org.ferrule.model.Features;
import org.ferrule.model.ModelPackage.Literals;

/**
 * What a chart asks beyond its devices, as statements of a key and a value, such as {@code conditions.reach: 120 cm}.
 * Values stand as they were typed, so that nothing seems to have changed where only the program has.
 */
final class AskedWords {
    private static final List<EStructuralFeature> ASKED = List.of(Literals.FIT_CHART__CONDITIONS,
            Literals.FIT_CHART__PATH, Literals.FIT_CHART__LESION);

    private final List<String> statements = new ArrayList<>();

    private AskedWords() {
    }

    static List<String> of(FitChart chart) {
        AskedWords words = new AskedWords();
        ASKED.forEach(feature -> words.add("", chart, feature));
        return List.copyOf(words.statements);
    }

    private void add(String before, EObject object, EStructuralFeature feature) {
        String key = before + feature.getName();
        if (!object.eIsSet(feature)) {
            return;
        }
        Object value = object.eGet(feature);
        if (value instanceof List<?> values) {
            for (int i = 0; i < values.size(); i++) {
                add(key + "[" + i + "]", feature, values.get(i));
            }
        } else {
            add(key, feature, value);
        }
    }

    private void add(String key, EStructuralFeature feature, Object value) {
        if (value instanceof EObject part) {
            Features.inDocumentOrder(part.eClass()).forEach(inner -> add(key + ".", part, inner));
        } else {
            statements.add(key + ": " + EcoreUtil.convertToString(((EAttribute) feature).getEAttributeType(), value));
        }
    }
}
