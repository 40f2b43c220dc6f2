/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.fit;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.ui.PartInitException;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Themes;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What stands around the cells of a matrix follows the theme, also while it is open. */
class MatrixThemeTest {

    private static final int DARK = 90;
    private static final int LIGHT = 165;

    private ChartFixture fixture;
    private Robot robot;

    @BeforeEach
    void open() throws CommandException, PartInitException {
        fixture = ChartFixture.ofDemo("balloons-through-guides.chart.json");
        robot = fixture.robot();
        robot.waitForJobs();
    }

    @AfterEach
    void close() throws CoreException {
        Themes.LIGHT.choose(robot);
        fixture.close();
    }

    @Test
    void anOpenMatrixBecomesDarkAndLightAgain() {
        assertTrue(head() > LIGHT, () -> "the head of a row is as light as " + head());
        Themes.DARK.choose(robot);
        robot.waitFor("a dark head", () -> head() < DARK);
        new ScreenPicture().take("matrix-dark");
        Themes.LIGHT.choose(robot);
        robot.waitFor("a light head", () -> head() > LIGHT);
    }

    /** How light the head of the first row is, left of its words. */
    private int head() {
        NatTable table = fixture.table().control();
        Rectangle cell = fixture.table().boundsOf(0, 0).orElseThrow();
        Image image = new Image(table.getDisplay(), 1, 1);
        GC gc = new GC(table);
        try {
            gc.copyArea(image, cell.x - 4, cell.y + cell.height / 2 + 2);
            ImageData pixels = image.getImageData();
            RGB rgb = pixels.palette.getRGB(pixels.getPixel(0, 0));
            return (rgb.red + rgb.green + rgb.blue) / 3;
        } finally {
            gc.dispose();
            image.dispose();
        }
    }
}
