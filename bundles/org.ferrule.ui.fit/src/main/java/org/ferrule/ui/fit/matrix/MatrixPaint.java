/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

import java.util.function.Supplier;

import org.eclipse.nebula.widgets.nattable.config.CellConfigAttributes;
import org.eclipse.nebula.widgets.nattable.config.IConfigRegistry;
import org.eclipse.nebula.widgets.nattable.grid.GridRegion;
import org.eclipse.nebula.widgets.nattable.painter.cell.ICellPainter;
import org.eclipse.nebula.widgets.nattable.style.DisplayMode;
import org.eclipse.swt.graphics.Rectangle;

/** Which painter paints which region. */
final class MatrixPaint {

    private final MatrixContent content;
    private final CellMeasures measures;
    private final ICellPainter cells;
    private final Supplier<Rectangle> visible;
    private final SumPainter sums;

    MatrixPaint(MatrixContent content, CellMeasures measures, ICellPainter cells, SumPainter sums,
            Supplier<Rectangle> visible) {
        this.sums = sums;
        this.visible = visible;
        this.content = content;
        this.measures = measures;
        this.cells = cells;
    }

    void install(IConfigRegistry registry) {
        ICellPainter outer = new HeadCells(Side.OUTER, content, measures, sums, visible);
        ICellPainter inner = new HeadCells(Side.INNER, content, measures, sums, visible);
        register(registry, cells, GridRegion.BODY);
        register(registry, outer, GridRegion.ROW_HEADER);
        register(registry, outer, GridRegion.ROW_GROUP_HEADER);
        register(registry, inner, GridRegion.COLUMN_HEADER);
        register(registry, inner, GridRegion.COLUMN_GROUP_HEADER);
        register(registry, new CornerCell(content, measures), GridRegion.CORNER);
        registry.registerConfigAttribute(CellConfigAttributes.GRID_LINE_COLOR, HeadColours.grid());
    }

    private static void register(IConfigRegistry registry, ICellPainter painter, String region) {
        registry.registerConfigAttribute(CellConfigAttributes.CELL_PAINTER, painter, DisplayMode.NORMAL, region);
    }
}
