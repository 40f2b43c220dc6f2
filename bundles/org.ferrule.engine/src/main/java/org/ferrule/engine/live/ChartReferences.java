/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.live;

import org.eclipse.emf.common.notify.Notification;
import org.ferrule.engine.chart.ChartProblem;
import org.ferrule.model.FitChart;
import org.ferrule.model.ModelPackage;

/** The references of a chart to other documents. */
final class ChartReferences {
    private ChartReferences() {
    }

    static boolean isReference(Notification notification) {
        return notification.getFeature() == ModelPackage.Literals.FIT_CHART__LIBRARIES
                || notification.getFeature() == ModelPackage.Literals.FIT_CHART__RULES;
    }

    static ChartProblem missingRules(FitChart chart) {
        return new ChartProblem("rules", chart.getRules() == null ? "the chart names no rule set"
                : "the rule set \"" + chart.getRules() + "\" cannot be opened");
    }

    static ChartProblem missingLibrary(String path) {
        return new ChartProblem("libraries", "the library \"" + path + "\" cannot be opened");
    }
}
