/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.devices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.IntBinaryOperator;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Sash;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Themes;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** The table of devices follows the theme, whichever it was opened in. */
class SheetThemeTest {

    private static final int DARK = 90;
    private static final int LIGHT = 165;

    @AfterEach
    void chooseLight() {
        Themes.LIGHT.choose(new Robot());
    }

    @Test
    void openTableBecomesDarkAndLightAgain() throws CoreException {
        try (LibraryRobot library = new LibraryRobot(Libraries.SAMPLE)) {
            assertLight(library);
            Themes.DARK.choose(library.robot());
            assertDark(library);
            new ScreenPicture().take("device-table-dark");
            Themes.LIGHT.choose(library.robot());
            assertLight(library);
        }
    }

    @Test
    void tableThatIsOpenedInTheDarkIsDark() throws CoreException {
        Themes.DARK.choose(new Robot());
        try (LibraryRobot library = new LibraryRobot(Libraries.SAMPLE)) {
            assertDark(library);
            library.robot().waitFor("dark bars between the parts", () -> Widgets.all(library.body(), Sash.class)
                    .allMatch(sash -> sash.getBackground().getRed() < DARK));
            assertEquals(2, Widgets.all(library.body(), Sash.class).count());
        }
    }

    @Test
    void buttonsThatCannotBePressedAreTellableInTheDarkToo() throws CoreException {
        Themes.DARK.choose(new Robot());
        try (LibraryRobot library = new LibraryRobot(Libraries.SAMPLE)) {
            library.clickRow(library.devices(), 2);
            library.openTab("Shaft");
            library.clickRow(library.sections(), 0);
            Button up = Widgets.button(library.body(), "Up");
            Button down = Widgets.button(library.body(), "Down");
            library.robot().waitFor("pale letters", () -> grey(up) < grey(down));
            new ScreenPicture().take("buttons-dark");
            assertTrue(!up.isEnabled() && down.isEnabled(), "the first of two can go down only");
            library.clickRow(library.sections(), 1);
            library.robot().waitFor("the other way round", () -> grey(down) < grey(up));
            Themes.LIGHT.choose(library.robot());
            library.robot().waitFor("dark letters", () -> grey(up) < DARK);
        }
    }

    private static int grey(Button button) {
        return button.getForeground().getRed();
    }

    /** Waits, since a theme reaches the parts of a table one after the other. */
    private static void assertDark(LibraryRobot library) {
        Robot robot = library.robot();
        robot.waitFor("a cell without light places", () -> lightest(library, cell(library)) < DARK);
        robot.waitFor("a dark line below a cell", () -> lightest(library, line(library)) < DARK);
        robot.waitFor("darkness below the last row", () -> lightest(library, below(library)) < DARK);
        robot.waitFor("a head of a row without light places", () -> lightest(library, head(library)) < DARK);
        robot.waitFor("a cell with light text", () -> lightest(library, id(library)) > LIGHT);
    }

    private static void assertLight(LibraryRobot library) {
        Robot robot = library.robot();
        robot.waitFor("a cell without dark places", () -> darkest(library, cell(library)) > LIGHT);
        robot.waitFor("a light line below a cell", () -> darkest(library, line(library)) > LIGHT);
        robot.waitFor("light below the last row", () -> darkest(library, below(library)) > LIGHT);
        robot.waitFor("a head of a row without dark places", () -> darkest(library, head(library)) > LIGHT);
        robot.waitFor("a cell with dark text", () -> darkest(library, id(library)) < DARK);
    }

    private static Rectangle id(LibraryRobot library) {
        library.grid().scrollTo(library.column("Id"), 1);
        return library.grid().bounds(library.column("Id"), 1).orElseThrow();
    }

    /** A part of a cell where no text is. */
    private static Rectangle cell(LibraryRobot library) {
        Rectangle whole = id(library);
        return new Rectangle(whole.x + 1, whole.y + 1, 3, whole.height - 3);
    }

    private static Rectangle line(LibraryRobot library) {
        Rectangle whole = id(library);
        return new Rectangle(whole.x + 1, whole.y + whole.height - 1, 3, 2);
    }

    private static Rectangle below(LibraryRobot library) {
        Rectangle last = library.grid().bounds(library.column("Id"), library.lines() - 1).orElseThrow();
        return new Rectangle(last.x, last.y + last.height + 4, last.width, 10);
    }

    /** A part of the head of a row where no icon is. */
    private static Rectangle head(LibraryRobot library) {
        Rectangle whole = library.grid().headBounds(1).orElseThrow();
        return new Rectangle(whole.x + 1, whole.y + 1, 3, whole.height - 3);
    }

    private static int darkest(LibraryRobot library, Rectangle area) {
        return grey(library, area, Math::min);
    }

    private static int lightest(LibraryRobot library, Rectangle area) {
        return grey(library, area, Math::max);
    }

    private static int grey(LibraryRobot library, Rectangle area, IntBinaryOperator choice) {
        ImageData pixels = painted(library.devices(), area);
        int found = -1;
        for (int y = 0; y < pixels.height; y++) {
            for (int x = 0; x < pixels.width; x++) {
                RGB rgb = pixels.palette.getRGB(pixels.getPixel(x, y));
                int grey = (rgb.red + rgb.green + rgb.blue) / 3;
                found = found < 0 ? grey : choice.applyAsInt(found, grey);
            }
        }
        return found;
    }

    private static ImageData painted(NatTable table, Rectangle area) {
        table.update();
        Image image = new Image(table.getDisplay(), area.width, area.height);
        GC gc = new GC(table);
        try {
            gc.copyArea(image, area.x, area.y);
            return image.getImageData();
        } finally {
            gc.dispose();
            image.dispose();
        }
    }
}
