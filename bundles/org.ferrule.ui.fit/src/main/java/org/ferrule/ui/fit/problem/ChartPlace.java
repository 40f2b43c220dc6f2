/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.problem;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.ferrule.model.FitChart;
import org.ferrule.model.ModelPackage;

/**
 * Where in a chart something is wrong.
 *
 * @param object an object of the chart
 * @param feature its feature, or null for the whole object
 */
record ChartPlace(EObject object, EStructuralFeature feature) {

    /** The place that the engine names by the key of the chart or of its conditions. */
    static ChartPlace of(FitChart chart, String key) {
        EStructuralFeature feature = chart.eClass().getEStructuralFeature(key);
        if (feature == null) {
            EStructuralFeature condition = ModelPackage.Literals.CONDITIONS.getEStructuralFeature(key);
            boolean known = condition != null && chart.getConditions() != null;
            return known ? new ChartPlace(chart.getConditions(), condition) : new ChartPlace(chart, null);
        }
        boolean part = feature.getEType() instanceof EClass && !feature.isMany();
        EObject object = part ? (EObject) chart.eGet(feature) : null;
        return object == null ? new ChartPlace(chart, feature) : new ChartPlace(object, within(key));
    }

    private static EStructuralFeature within(String key) {
        return switch (key) {
            case "outer", "inner" -> ModelPackage.Literals.AXIS__DEVICES;
            default -> null;
        };
    }
}
