/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.devices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.List;
import java.util.stream.Stream;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.ferrule.model.Balloon;
import org.ferrule.model.ComplianceRow;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A compliance table that only a line states is stated for the size, all of it, when a row is changed. */
class InheritedComplianceTest {

    private static final String LINE = """
            "maker": "Osterbrook Devices",
                  "balloon": {
                    "section": "balloon",
                    "diameter": "2.0 mm",
                    "nominalPressure": "8 atm",
                    "ratedBurstPressure": "14 atm",
                    "compliance": [
                      {"pressure": "6 atm", "diameter": "1.92 mm"},
                      {"pressure": "8 atm", "diameter": "2.00 mm"},
                      {"pressure": "12 atm", "diameter": "2.08 mm"}
                    ]
                  },""";

    private LibraryRobot library;
    private Robot robot;

    @BeforeEach
    void open() throws CoreException {
        library = new LibraryRobot(Libraries.SAMPLE.replaceFirst("\"maker\": \"Osterbrook Devices\",", LINE));
        robot = library.robot();
        library.clickRow(library.devices(), 0);
        library.openTab("Working parts");
        robot.waitFor("the line's rows", () -> rows().getItemCount() == 3);
    }

    @AfterEach
    void close() throws CoreException {
        library.close();
    }

    private Table rows() {
        return Widgets.first(library.body(), Table.class,
                table -> Stream.of(table.getColumns()).anyMatch(column -> column.getText().equals("Pressure")))
                .orElseThrow();
    }

    private Balloon own() {
        return library.device("ost-2.0").getBalloon();
    }

    private List<String> diameters() {
        return own().getCompliance().stream().map(ComplianceRow::getDiameter)
                .map(diameter -> diameter == null ? "" : diameter.text()).toList();
    }

    private void press(Button button) {
        robot.waitFor("the focus", () -> button.setFocus() && button.isFocusControl());
        robot.type(" ");
    }

    @Test
    void allRowsAreStatedForTheSizeWhenOneIsOverridden() {
        assertNull(own());
        robot.scrollTo(rows());
        library.clickRow(rows(), 1);
        press(Widgets.button(rows().getParent().getParent(), "Override here"));
        robot.waitFor("a table of the size", () -> own() != null && own().getCompliance().size() == 3);
        robot.waitFor("the same row", () -> rows().getSelectionIndex() == 1);
        Text diameter = Widgets.labelled(rows().getParent().getParent(), "Diameter", Text.class);
        robot.scrollTo(diameter);
        library.replace(diameter, "2.02 mm");
        robot.waitFor("the figure", () -> diameters().equals(List.of("1.92 mm", "2.02 mm", "2.08 mm")));
        assertEquals(List.of("6 atm", "8 atm", "12 atm"),
                own().getCompliance().stream().map(row -> row.getPressure().text()).toList());
        new ScreenPicture().take("compliance-inherited");
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("the line's figure", () -> diameters().get(1).equals("2.00 mm"));
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("the line's table alone", () -> own() == null);
    }

    @Test
    void rowsOfTheLineStayWhenTheSizeAddsOne() {
        robot.scrollTo(rows());
        press(Widgets.button(rows().getParent(), "Add"));
        robot.waitFor("a table of the size", () -> own() != null && own().getCompliance().size() == 4);
        assertEquals(List.of("1.92 mm", "2.00 mm", "2.08 mm"), diameters().subList(0, 3));
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("the line's table alone", () -> own() == null);
    }
}
