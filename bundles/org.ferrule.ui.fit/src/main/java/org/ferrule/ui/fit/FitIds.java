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

    /** Command: show the card of the selected cell. */
    public static final String SHOW_CARD = "org.ferrule.ui.fit.showCard";
    /** Command: open what stands beside the matrix, or fold it away. */
    public static final String SHOW_BESIDE = "org.ferrule.ui.fit.showBeside";
    /** Command: show the sums of verdicts, or hide them. */
    public static final String SHOW_SUMS = "org.ferrule.ui.fit.showSums";
    /** Command: sort rows by their sums. */
    public static final String SORT_ROWS = "org.ferrule.ui.fit.sortRows";
    /** Command: sort columns by their sums. */
    public static final String SORT_COLUMNS = "org.ferrule.ui.fit.sortColumns";
    /** Command: go to the next device that was found. */
    public static final String FIND_NEXT = "org.ferrule.ui.fit.findNext";
    /** Command: go to the device that was found before. */
    public static final String FIND_PREVIOUS = "org.ferrule.ui.fit.findPrevious";

    private FitIds() {
    }
}
