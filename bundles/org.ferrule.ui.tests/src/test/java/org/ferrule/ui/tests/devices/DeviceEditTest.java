/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.devices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.forms.widgets.Hyperlink;
import org.ferrule.ui.preferences.FigureWords;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Editing one device: its fields, its drawing, and what its line has to do with it. */
class DeviceEditTest {

    private static final String OUTER_DIAMETER = "Outer diameter";

    private LibraryRobot library;
    private Robot robot;

    @BeforeEach
    void open() throws CoreException {
        library = new LibraryRobot(Libraries.SAMPLE);
        robot = library.robot();
    }

    @AfterEach
    void close() throws CoreException {
        library.close();
    }

    private void openShaftOf(int device) {
        library.clickRow(library.devices(), device);
        library.openTab("Shaft");
    }

    private void openBodyOfGuide() {
        openShaftOf(2);
        library.clickRow(library.sections(), 1);
    }

    private Text diameter() {
        return library.field(OUTER_DIAMETER);
    }

    @Test
    void whatAFigureAmountsToIsShownInAsManyUnitsAsThereIsRoomFor() {
        openBodyOfGuide();
        robot.waitFor("what 2.06 mm amount to",
                () -> meanings().anyMatch(label -> label.getText().startsWith("2.060 mm")));
        robot.waitFor("room for all that is said", () -> meanings().allMatch(
                label -> label.computeSize(SWT.DEFAULT, SWT.DEFAULT).x <= label.getSize().x));
    }

    private Stream<Label> meanings() {
        return Widgets.all(library.sections().getParent().getParent().getParent(), Label.class)
                .filter(label -> label.getToolTipText() != null
                        && label.getToolTipText().contains(FigureWords.BETWEEN_UNITS));
    }

    @Test
    void drawingFollowsTheEditAndItsUndo() {
        openBodyOfGuide();
        byte[] before = library.pixels(library.canvas());
        library.replace(diameter(), "1.20 mm");
        robot.waitFor("another drawing", () -> !Arrays.equals(before, library.pixels(library.canvas())));
        assertTrue(library.fixture().editor().isDirty());
        byte[] after = library.pixels(library.canvas());
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("the former field", () -> diameter().getText().equals("2.06 mm"));
        robot.waitFor("the former drawing", () -> Arrays.equals(before, library.pixels(library.canvas())));
        library.fixture().editor().session().redo();
        robot.waitFor("the later field", () -> diameter().getText().equals("1.20 mm"));
        robot.waitFor("the later drawing", () -> Arrays.equals(after, library.pixels(library.canvas())));
        new ScreenPicture().take("device-edited");
    }

    @Test
    void saveChangesOneLineOfTheFile() throws CoreException, IOException {
        openBodyOfGuide();
        library.replace(diameter(), "2.10 mm");
        robot.waitFor("the edit", () -> library.fixture().editor().isDirty());
        robot.keys(SWT.CTRL, 's');
        robot.waitFor("a clean editor", () -> !library.fixture().editor().isDirty());
        assertEquals(List.of("\"od\": \"2.10 mm\""), changedLines(library.fixture().text()));
        library.fixture().editor().getSite().getPage().closeAllEditors(false);
        library.fixture().open();
        assertEquals("2.10 mm", library.device("hol-6").getSections().get(1).getOd().text());
    }

    private static List<String> changedLines(String text) {
        List<String> before = Libraries.SAMPLE.lines().toList();
        List<String> after = text.lines().toList();
        assertEquals(before.size(), after.size());
        return IntStream.range(0, after.size()).filter(i -> !before.get(i).equals(after.get(i)))
                .mapToObj(i -> after.get(i).strip()).toList();
    }

    @Test
    void unreadableTextStaysInTheFieldAndOutOfTheLibrary() {
        openBodyOfGuide();
        library.replace(diameter(), "2,06 mm");
        assertEquals("2.06 mm", library.device("hol-6").getSections().get(1).getOd().text());
        assertFalse(library.fixture().editor().isDirty());
        assertEquals("2,06 mm", diameter().getText());
        assertTrue(Widgets.all(library.body(), StyledText.class).anyMatch(line -> line.getText().contains("2,06")),
                "the field does not say what is wrong");
        new ScreenPicture().take("device-unreadable");
    }

    @Test
    void inheritedValuesAreHints() {
        library.clickRow(library.devices(), 0);
        library.openTab("Identity");
        assertEquals("", library.field("Effective length").getText());
        assertEquals("142 cm", library.field("Effective length").getMessage());
    }

    @Test
    void inheritedSectionIsOverriddenForOneSize() {
        openShaftOf(0);
        library.clickRow(library.sections(), 2);
        new ScreenPicture().take("device-inherited");
        library.press("Override here");
        robot.waitFor("the field", () -> diameter().isEnabled() && diameter().getMessage().equals("0.86 mm"));
        library.replace(diameter(), "0.88 mm");
        assertEquals("0.88 mm", library.device("ost-2.0").getSections().get(1).getOd().text());
        assertEquals("0.86 mm", library.library().getLines().get(0).getSections().get(2).getOd().text());
    }

    @Test
    void lineOfAPartIsOneClickAway() {
        openShaftOf(0);
        library.clickRow(library.sections(), 2);
        Widgets.first(library.body(), Hyperlink.class, link -> link.getText().equals("Go to the line")).orElseThrow()
                .setFocus();
        robot.key(SWT.CR);
        robot.waitFor("the page of lines", () -> library.fixture().editor().getActivePage() == LibraryRobot.PAGE_LINES);
        assertEquals("0.86 mm", diameter().getText());
    }

    @Test
    void clickInTheDrawingSelectsTheSection() {
        library.clickRow(library.devices(), 2);
        Rectangle body = library.canvas().boundsOf("section:body").orElseThrow();
        library.clickDrawing(body.x + body.width / 4, body.y + 3);
        robot.waitFor("the fields of the section", () -> library.field("Name").getText().equals("body"));
    }

    @Test
    void selectedSectionIsEmphasized() {
        openShaftOf(2);
        library.clickRow(library.sections(), 0);
        byte[] tip = library.pixels(library.canvas());
        library.clickRow(library.sections(), 1);
        robot.waitFor("another emphasis", () -> !Arrays.equals(tip, library.pixels(library.canvas())));
    }
}
