/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.profile;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.ferrule.ui.profile.ProfileIds;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Themes;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Whether a box is ticked can be seen on the screen, not only asked of the widget. */
class TickTest {

    private static final int BOX = 20;
    private static final int DARK = 110;

    private PlotFixture fixture;
    private Robot robot;
    private Button box;

    @BeforeEach
    void open() throws CommandException, CoreException {
        fixture = new PlotFixture(ProfileIds.COMPARE_VIEW);
        robot = fixture.robot();
        Themes.LIGHT.choose(robot);
        box = Widgets.button(fixture.body(), "Tolerance bands");
    }

    @AfterEach
    void close() throws CoreException {
        fixture.close();
    }

    @Test
    void boxShowsItsTickOnALightGround() {
        boolean ticked = box.getSelection();
        robot.waitFor("the box as it is", () -> showsTick() == ticked);
        robot.clickUntil("the other state", box, () -> box.getSelection() != ticked);
        robot.waitFor("the box as it is then", () -> showsTick() != ticked);
        robot.clickUntil("the state before", box, () -> box.getSelection() == ticked);
        assertEquals(ticked, box.getSelection());
    }

    private boolean showsTick() {
        Point corner = box.toDisplay(0, 0);
        ImageData picture = new ScreenPicture().take("tick", new Rectangle(corner.x, corner.y, BOX, box.getSize().y));
        int dark = 0;
        for (int x = 0; x < picture.width; x++) {
            for (int y = 0; y < picture.height; y++) {
                RGB colour = picture.palette.getRGB(picture.getPixel(x, y));
                dark += (colour.red + colour.green + colour.blue) / 3 < DARK ? 1 : 0;
            }
        }
        return dark > BOX / 2;
    }
}
