/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.problem;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.ferrule.engine.chart.ChartProblem;
import org.ferrule.model.FitChart;
import org.ferrule.model.ModelPackage;

/**
 * Where in a chart something is wrong.
 *
 * @param object an object of the chart
 * @param feature its feature, or null for the whole object
 */
record ChartPlace(EObject object, EStructuralFeature feature) {

    /** The place that the engine names by the key of the chart or of its conditions, and a part of what stands there. */
    static ChartPlace of(FitChart chart, ChartProblem problem) {
        ChartPlace place = of(chart, problem.place());
        return problem.part().flatMap(place::part).orElse(place);
    }

    private static ChartPlace of(FitChart chart, String key) {
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

    /** The document may have moved on since it was answered; then the part may be gone. */
    private Optional<ChartPlace> part(ChartProblem.Part part) {
        List<?> there = feature == null ? List.of()
                : object.eGet(feature) instanceof List<?> several ? several
                        : Stream.ofNullable(object.eGet(feature)).toList();
        return there.stream().skip(part.index()).findFirst().map(EObject.class::cast)
                .map(found -> new ChartPlace(found, found.eClass().getEStructuralFeature(part.key())));
    }

    private static EStructuralFeature within(String key) {
        return switch (key) {
            case "outer", "inner" -> ModelPackage.Literals.AXIS__DEVICES;
            default -> null;
        };
    }
}
