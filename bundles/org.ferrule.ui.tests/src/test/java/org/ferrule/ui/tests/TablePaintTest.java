/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.nebula.widgets.nattable.data.IDataProvider;
import org.eclipse.nebula.widgets.nattable.grid.data.DummyBodyDataProvider;
import org.eclipse.nebula.widgets.nattable.layer.DataLayer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * Reads back what the table widget has painted. When the service loader bridge (SPI-Fly) is not started first, cells
 * stay empty and nothing is logged.
 */
class TablePaintTest {

    private static final int DARK = 110;

    private Shell shell;

    @BeforeEach
    void openShell() {
        shell = new Shell(Display.getCurrent(), SWT.SHELL_TRIM);
        shell.setLayout(new FillLayout());
        shell.setSize(400, 200);
    }

    @AfterEach
    void closeShell() {
        shell.dispose();
    }

    @Test
    void paintsTheTextOfACell() {
        NatTable table = openTable(new DummyBodyDataProvider(2, 2));
        Rectangle cell = table.getBoundsByPosition(0, 0);
        assertTrue(darkPixels(table, inner(cell)) > 10, "the first cell is empty");
    }

    private NatTable openTable(IDataProvider data) {
        NatTable table = new NatTable(shell, new DataLayer(data));
        shell.open();
        shell.layout();
        settle();
        return table;
    }

    private void settle() {
        Display display = shell.getDisplay();
        shell.update();
        for (int i = 0; i < 200 && display.readAndDispatch(); i++) {
            display.update();
        }
    }

    /** The cell without its grid lines, which are dark too. */
    private static Rectangle inner(Rectangle cell) {
        return new Rectangle(cell.x + 2, cell.y + 2, cell.width - 4, cell.height - 4);
    }

    private int darkPixels(NatTable table, Rectangle area) {
        Image image = new Image(shell.getDisplay(), table.getSize().x, table.getSize().y);
        GC gc = new GC(table);
        try {
            gc.copyArea(image, 0, 0);
            return countDark(image.getImageData(), area);
        } finally {
            gc.dispose();
            image.dispose();
        }
    }

    private static int countDark(ImageData pixels, Rectangle area) {
        int dark = 0;
        for (int y = area.y; y < area.y + area.height; y++) {
            for (int x = area.x; x < area.x + area.width; x++) {
                RGB rgb = pixels.palette.getRGB(pixels.getPixel(x, y));
                dark += Math.max(rgb.red, Math.max(rgb.green, rgb.blue)) < DARK ? 1 : 0;
            }
        }
        return dark;
    }
}
