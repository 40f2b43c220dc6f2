/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.grid;

import org.eclipse.nebula.widgets.nattable.config.AbstractRegistryConfiguration;
import org.eclipse.nebula.widgets.nattable.config.CellConfigAttributes;
import org.eclipse.nebula.widgets.nattable.config.IConfigRegistry;
import org.eclipse.nebula.widgets.nattable.grid.GridRegion;
import org.eclipse.nebula.widgets.nattable.painter.cell.ICellPainter;
import org.eclipse.nebula.widgets.nattable.style.DisplayMode;

/** Which painter paints which region. */
final class GridPaint extends AbstractRegistryConfiguration {

    private final ICellPainter cells;
    private final ICellPainter heads;
    private final ICellPainter rowHeads;

    GridPaint(ICellPainter cells, ICellPainter heads, ICellPainter rowHeads) {
        this.cells = cells;
        this.heads = heads;
        this.rowHeads = rowHeads;
    }

    @Override
    public void configureRegistry(IConfigRegistry registry) {
        register(registry, cells, GridRegion.BODY);
        register(registry, heads, GridRegion.COLUMN_HEADER);
        register(registry, rowHeads, GridRegion.ROW_HEADER);
        register(registry, new CornerPaint(), GridRegion.CORNER);
    }

    private static void register(IConfigRegistry registry, ICellPainter painter, String region) {
        registry.registerConfigAttribute(CellConfigAttributes.CELL_PAINTER, painter, DisplayMode.NORMAL, region);
    }
}
