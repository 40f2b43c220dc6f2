/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.devices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.ferrule.ui.tests.robot.Proposals;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Tests what fields propose while the user types. */
class FieldAssistTest {

    private LibraryRobot library;
    private Robot robot;

    @BeforeEach
    void open() throws CoreException {
        library = new LibraryRobot(Libraries.SAMPLE);
        robot = library.robot();
        library.clickRow(library.devices(), 2);
        library.openTab("Shaft");
        library.clickRow(library.sections(), 1);
    }

    @AfterEach
    void close() throws CoreException {
        library.close();
    }

    private void type(Text field, String text) {
        robot.replace(field, text);
    }

    /** The field, which the form brings into view when it gets the focus. */
    private Text seen(String label) {
        Text field = library.field(label);
        field.setFocus();
        robot.settle();
        return field;
    }

    /** The first words of what is offered. */
    private List<String> proposed() {
        robot.keys(SWT.CTRL, ' ');
        return proposals().entries().stream().map(text -> text.split("  ")[0]).toList();
    }

    private Proposals proposals() {
        return new Proposals(robot, library.body().getShell());
    }

    private void choose(int row) {
        proposals().choose(row);
    }

    private String diameter() {
        return library.device("hol-6").getSections().get(1).getOd().text();
    }

    @Test
    void unitsFollowANumber() {
        Text field = library.field("Outer diameter");
        type(field, "2.1");
        assertEquals(List.of("mm", "in", "Fr", "cm"), proposed());
        choose(0);
        robot.waitFor("the unit", () -> field.getText().equals("2.1 mm"));
    }

    @Test
    void meaningsFollowAUnit() {
        Text field = library.field("Outer diameter");
        type(field, "2.1 mm");
        assertEquals(List.of("min", "max", "nom", "measured", "\u00b1", "..", "sd"), proposed());
        new ScreenPicture().take("field-assist");
        choose(1);
        robot.waitFor("the meaning", () -> field.getText().equals("2.1 mm max"));
        robot.key(SWT.CR);
        robot.waitFor("the change", () -> diameter().equals("2.1 mm max"));
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("the former figure", () -> diameter().equals("2.06 mm"));
    }

    @Test
    void numberOfSpecimensFollowsADeviation() {
        Text field = library.field("Outer diameter");
        type(field, "1.015 mm sd 0.008 ");
        List<String> proposed = proposed();
        assertTrue(proposed.contains("n"), proposed.toString());
        assertTrue(proposed.contains("mm"), proposed.toString());
        choose(proposed.indexOf("n"));
        robot.waitFor("the word", () -> field.getText().equals("1.015 mm sd 0.008 n "));
        robot.type("12");
        robot.waitFor("the mean beside the field", () -> labels().anyMatch(text -> text.contains("mean")));
    }

    @Test
    void canonicalValueAndErrorFollowEveryKey() {
        Text field = library.field("Outer diameter");
        type(field, "6 Fr");
        robot.waitFor("millimetres", () -> labels().anyMatch(text -> text.startsWith("2.000 mm")));
        type(field, "6 F,");
        robot.waitFor("the error", () -> problem().contains("expected"));
        robot.key(SWT.ESC);
        robot.waitFor("the former text", () -> field.getText().equals("2.06 mm"));
        assertEquals("", problem());
    }

    @Test
    void sourcesAreProposedWithTheirTitles() {
        Text field = seen("Source");
        type(field, "instr");
        robot.waitFor("an error", () -> problem().contains("expected the id of a source"));
        assertEquals(List.of("ifu"), proposed());
        choose(0);
        robot.waitFor("the source", () -> "ifu".equals(library.device("hol-6").getSections().get(1).getSource()));
        assertTrue(Widgets.all(library.body(), Label.class).map(Label::getToolTipText)
                .anyMatch("Instructions for use (invented)"::equals));
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("no source", () -> library.device("hol-6").getSections().get(1).getSource() == null);
    }

    @Test
    void sourceThatIsNotThereStaysOutOfTheLibrary() {
        Text field = seen("Source");
        type(field, "else");
        robot.key(SWT.CR);
        robot.waitFor("an error", () -> problem().contains("such as ifu"));
        assertNull(library.device("hol-6").getSections().get(1).getSource());
        robot.key(SWT.ESC);
        robot.waitFor("no error", () -> problem().isEmpty());
    }

    private Stream<String> labels() {
        return Widgets.all(library.body(), Label.class).map(Label::getText);
    }

    private String problem() {
        return Widgets.first(library.body(), StyledText.class, t -> !t.getText().isEmpty()).map(StyledText::getText)
                .orElse("");
    }
}
