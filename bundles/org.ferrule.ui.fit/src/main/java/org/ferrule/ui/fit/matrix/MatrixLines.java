/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

import java.util.ArrayList;
import java.util.List;

import org.ferrule.chart.page.Head;
import org.ferrule.engine.catalogue.CataloguedDevice;
import org.ferrule.engine.chart.AssembledChart;
import org.ferrule.engine.chart.AxisEntry;
import org.ferrule.engine.content.Heads;

/** The rows and columns of a chart. */
public final class MatrixLines {

    private MatrixLines() {
    }

    /** Returns the lines of a side, in the order of the chart. */
    public static List<MatrixLine> of(AssembledChart chart, Side side) {
        return side == Side.OUTER ? outer(chart) : inner(chart);
    }

    private static List<MatrixLine> outer(AssembledChart chart) {
        List<MatrixLine> lines = new ArrayList<>();
        for (int i = 0; i < chart.outer().size(); i++) {
            AxisEntry entry = chart.outer().get(i);
            Head head = Heads.outer(entry, chart.outerGroups().get(i));
            lines.add(new MatrixLine(key(entry), head));
        }
        return lines;
    }

    private static List<MatrixLine> inner(AssembledChart chart) {
        List<MatrixLine> lines = new ArrayList<>();
        for (int i = 0; i < chart.inner().size(); i++) {
            CataloguedDevice device = chart.inner().get(i);
            lines.add(new MatrixLine(key(device), Heads.inner(device, chart.innerGroups().get(i))));
        }
        return lines;
    }

    /** Returns the key of a row. */
    public static String key(AxisEntry entry) {
        return entry.key();
    }

    /** Returns the key of a column. */
    public static String key(CataloguedDevice device) {
        return device.key();
    }
}
