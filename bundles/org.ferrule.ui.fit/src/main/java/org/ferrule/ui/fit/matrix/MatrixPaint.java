/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

import java.util.function.Predicate;
import java.util.function.Supplier;

import org.eclipse.nebula.widgets.nattable.config.CellConfigAttributes;
import org.eclipse.nebula.widgets.nattable.config.IConfigRegistry;
import org.eclipse.nebula.widgets.nattable.freeze.FreezeConfigAttributes;
import org.eclipse.nebula.widgets.nattable.grid.GridRegion;
import org.eclipse.nebula.widgets.nattable.layer.cell.ILayerCell;
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
    private final Predicate<ILayerCell> isSum;

    MatrixPaint(MatrixContent content, CellMeasures measures, ICellPainter cells, SumPainter sums,
            Predicate<ILayerCell> isSum, Supplier<Rectangle> visible) {
        this.isSum = isSum;
        this.sums = sums;
        this.visible = visible;
        this.content = content;
        this.measures = measures;
        this.cells = cells;
    }

    void install(IConfigRegistry registry) {
        ICellPainter rowHeads = new HeadCells(true, content, measures, sums, isSum, visible);
        ICellPainter columnHeads = new HeadCells(false, content, measures, sums, isSum, visible);
        register(registry, cells, GridRegion.BODY);
        register(registry, rowHeads, GridRegion.ROW_HEADER);
        register(registry, rowHeads, GridRegion.ROW_GROUP_HEADER);
        register(registry, columnHeads, GridRegion.COLUMN_HEADER);
        register(registry, columnHeads, GridRegion.COLUMN_GROUP_HEADER);
        register(registry, new CornerCell(content, measures), GridRegion.CORNER);
        registry.registerConfigAttribute(CellConfigAttributes.GRID_LINE_COLOR, HeadColours.grid());
        registry.registerConfigAttribute(FreezeConfigAttributes.SEPARATOR_COLOR, HeadColours.detail());
    }

    private static void register(IConfigRegistry registry, ICellPainter painter, String region) {
        registry.registerConfigAttribute(CellConfigAttributes.CELL_PAINTER, painter, DisplayMode.NORMAL, region);
    }
}
