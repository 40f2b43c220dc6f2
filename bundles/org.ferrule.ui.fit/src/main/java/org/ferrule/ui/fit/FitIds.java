/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit;

/** Ids of the parts that this bundle brings. */
public final class FitIds {

    /** The editor of fit charts. */
    public static final String CHART_EDITOR = "org.ferrule.ui.fit.chartEditor";

    /** The view that explains the answer about a pair. */
    public static final String GROUNDS_VIEW = "org.ferrule.ui.fit.grounds";

    /** The view for the daily question about one passage, without a chart. */
    public static final String PASSAGE_VIEW = "org.ferrule.ui.fit.passage";

    /** The view with the calculators. */
    public static final String SUMS_VIEW = "org.ferrule.ui.fit.sums";

    private FitIds() {
    }
}
