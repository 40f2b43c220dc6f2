/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.devices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.ferrule.ui.picture.PictureCanvas;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Tests the compliance table beside its curve, and the sources of claims. */
class ComplianceTest {

    private static final String BALLOON = """
            "size": "2.0 x 20 mm",
                  "balloon": {
                    "section": "balloon",
                    "diameter": "2.0 mm",
                    "nominalPressure": "8 atm",
                    "ratedBurstPressure": "14 atm",
                    "compliance": [
                      {"pressure": "6 atm", "diameter": "1.92 mm"},
                      {"pressure": "8 atm", "diameter": "2.00 mm"},
                      {"pressure": "12 atm", "diameter": "2.08 mm"},
                      {"pressure": "16 atm", "diameter": "2.15 mm"}
                    ]
                  },
                  "claims": [
                    {"type": "minimum lumen", "value": "0.056 in"},
                    {"type": "minimum lumen", "value": "5 Fr", "source": "ifu", "page": "12"}
                  ],""";

    private LibraryRobot library;
    private Robot robot;

    @BeforeEach
    void open() throws CoreException {
        library = new LibraryRobot(Libraries.SAMPLE.replace("\"size\": \"2.0 x 20 mm\",", BALLOON));
        robot = library.robot();
        library.clickRow(library.devices(), 0);
    }

    @AfterEach
    void close() throws CoreException {
        library.close();
    }

    private Table rows() {
        return Widgets.all(library.body(), Table.class)
                .filter(table -> table.getColumnCount() == 2 && table.getColumn(0).getText().equals("Pressure"))
                .findFirst().orElseThrow();
    }

    private PictureCanvas curve() {
        return Widgets.all(library.body(), PictureCanvas.class).filter(canvas -> canvas != library.canvas())
                .findFirst().orElseThrow();
    }

    private Text field(String label) {
        return Widgets.labelled(rows().getParent().getParent(), label, Text.class);
    }

    private void openTable() {
        library.openTab("Working parts");
        Control control = curve();
        ScrolledComposite scroller = scroller(control);
        scroller.setOrigin(0, control.getDisplay().map(control, scroller.getContent(), 0, 0).y - 20);
        robot.settle();
    }

    private static ScrolledComposite scroller(Control control) {
        return control instanceof ScrolledComposite found ? found : scroller(control.getParent());
    }

    private String diameter(int row) {
        return library.device("ost-2.0").getBalloon().getCompliance().get(row).getDiameter().text();
    }

    @Test
    void curveFollowsTheRowThatIsEditedAndItsUndo() {
        openTable();
        library.clickRow(rows(), 2);
        byte[] before = library.pixels(curve());
        new ScreenPicture().take("compliance");
        library.replace(field("Diameter"), "2.12 mm");
        robot.waitFor("the figure", () -> diameter(2).equals("2.12 mm"));
        robot.waitFor("another curve", () -> !Arrays.equals(before, library.pixels(curve())));
        assertEquals("2.12 mm", rows().getItem(2).getText(1));
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("the former figure", () -> diameter(2).equals("2.08 mm"));
        robot.waitFor("the former curve", () -> Arrays.equals(before, library.pixels(curve())));
    }

    @Test
    void selectedRowIsMarkedInTheCurveAndTheOtherWayRound() {
        openTable();
        library.clickRow(rows(), 0);
        byte[] first = library.pixels(curve());
        library.clickRow(rows(), 1);
        robot.waitFor("another mark", () -> !Arrays.equals(first, library.pixels(curve())));
        Rectangle point = curve().boundsOf("row:3").orElseThrow();
        robot.clickPainted(curve(), point.x + point.width / 2, point.y + point.height / 2);
        robot.waitFor("the last row", () -> rows().getSelectionIndex() == 3);
    }

    @Test
    void tableOutOfOrderSaysSoInsteadOfACurve() {
        openTable();
        library.clickRow(rows(), 3);
        library.replace(field("Pressure"), "10 atm");
        robot.waitFor("no curve", () -> curve().picture().isEmpty());
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("the curve", () -> curve().picture().isPresent());
    }

    @Test
    void nominalAndRatedBurstPressureAreMarked() {
        openTable();
        String description = curve().picture().orElseThrow().description();
        assertTrue(description.contains("nominal 8 atm") && description.contains("rated burst 14 atm"), description);
    }

    @Test
    void claimsShowTheSourceThatSpeaksForThem() {
        library.openTab("Claims");
        Table claims = Widgets.all(library.body(), Table.class)
                .filter(table -> table.getColumnCount() > 4 && table.getColumn(0).getText().equals("Type")).findFirst()
                .orElseThrow();
        new ScreenPicture().take("claims-with-sources");
        assertEquals("Instructions for use (invented), p. 3", claims.getItem(0).getText(5), "of the line");
        assertEquals("Instructions for use (invented), p. 12", claims.getItem(1).getText(5));
        assertFalse(library.fixture().editor().isDirty());
    }
}
