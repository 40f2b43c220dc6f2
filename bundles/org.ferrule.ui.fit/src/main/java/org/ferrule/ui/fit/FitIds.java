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

    /** The view of devices that lie in each other. */
    public static final String STACK_VIEW = "org.ferrule.ui.fit.stack";

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
    /** Command: exchange rows and columns. */
    public static final String TRANSPOSE = "org.ferrule.ui.fit.transpose";
    /** Command: fold the group of the selected row, or unfold it. */
    public static final String FOLD_ROWS = "org.ferrule.ui.fit.foldRows";
    /** Command: fold the group of the selected column, or unfold it. */
    public static final String FOLD_COLUMNS = "org.ferrule.ui.fit.foldColumns";
    /** Command: pin the selected row, or let it go. */
    public static final String PIN_ROW = "org.ferrule.ui.fit.pinRow";
    /** Command: pin the selected column, or let it go. */
    public static final String PIN_COLUMN = "org.ferrule.ui.fit.pinColumn";
    /** Command: hide the selected row. */
    public static final String HIDE_ROW = "org.ferrule.ui.fit.hideRow";
    /** Command: hide the selected column. */
    public static final String HIDE_COLUMN = "org.ferrule.ui.fit.hideColumn";
    /** Command: move the selected row up. */
    public static final String MOVE_UP = "org.ferrule.ui.fit.moveUp";
    /** Command: move the selected row down. */
    public static final String MOVE_DOWN = "org.ferrule.ui.fit.moveDown";
    /** Command: move the selected column to the left. */
    public static final String MOVE_LEFT = "org.ferrule.ui.fit.moveLeft";
    /** Command: move the selected column to the right. */
    public static final String MOVE_RIGHT = "org.ferrule.ui.fit.moveRight";
    /** Command: show only what has changed since the last save, since the sign-off, or all lines. */
    public static final String SHOW_CHANGES = "org.ferrule.ui.fit.showChanges";

    private FitIds() {
    }
}
