/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.look;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.ferrule.ui.look.DropDown;
import org.ferrule.ui.tests.robot.Repaints;
import org.ferrule.ui.tests.robot.Robot;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Lists that drop down, in a window of their own that is narrower or wider than their entries. */
class DropDownTest {

    private static final String SHORT = "Plain";
    private static final String LONG = "A line of balloons whose name does not find room in a narrow window";
    private static final String OTHER = "Another line of balloons, whose name is too long for that as well";
    private static final List<String> WORDS = List.of(SHORT, LONG, OTHER);
    private static final int NARROW = 220;
    private static final int WIDE = 900;

    private final Robot robot = new Robot();
    private final List<String> heard = new ArrayList<>();
    private Shell shell;
    private Text before;
    private DropDown list;

    @BeforeEach
    void open() {
        shell = new Shell(Display.getCurrent(), SWT.SHELL_TRIM);
        GridLayoutFactory.swtDefaults().applyTo(shell);
        before = new Text(shell, SWT.BORDER);
        list = new DropDown(shell, 80).explained("What it is for");
        list.onChoice(() -> heard.add(list.text()));
        shell.setBounds(100, 100, NARROW, 200);
        shell.open();
        before.setFocus();
        robot.settle();
    }

    @AfterEach
    void close() {
        shell.dispose();
        robot.settle();
    }

    private Combo combo() {
        return list.control();
    }

    private void goThere() {
        robot.clickUntil("the field above", before, before::isFocusControl);
        robot.key(SWT.TAB);
        robot.waitFor("the focus", () -> combo().isFocusControl());
    }

    @Test
    void chosenEntryIsCutToItsRoomAndNothingIsPaintedOverAndOver() {
        list.show(WORDS, 1);
        robot.settle();
        assertTrue(combo().getText().endsWith("\u2026"), combo()::getText);
        assertTrue(LONG.startsWith(combo().getText().replace("\u2026", "")), combo()::getText);
        assertEquals(LONG, list.text());
        assertEquals(LONG + "\nWhat it is for", combo().getToolTipText());
        assertEquals(List.of(), Repaints.whileIdle(robot));
    }

    @Test
    void otherEntriesStayWhole() {
        list.show(WORDS, 1);
        assertEquals(List.of(SHORT, OTHER), List.of(combo().getItem(0), combo().getItem(2)));
    }

    @Test
    void entryThatHasRoomIsWhole() {
        list.show(WORDS, 0);
        assertEquals(SHORT, combo().getText());
        assertEquals("What it is for", combo().getToolTipText());
    }

    @Test
    void entryIsWholeWhenTheWindowHasBecomeWide() {
        list.show(WORDS, 1);
        shell.setSize(WIDE, 200);
        robot.waitFor("the whole entry", () -> LONG.equals(combo().getText()));
        assertEquals(LONG, combo().getText());
    }

    @Test
    void listThatIsAsWideAsItWantsToBeCutsNothing() {
        list.show(WORDS, 0);
        GC gc = new GC(combo());
        int text = gc.textExtent(LONG).x;
        gc.dispose();
        list.show(List.of(LONG), 0);
        shell.setSize(WIDE, 200);
        robot.settle();
        int natural = combo().computeSize(SWT.DEFAULT, SWT.DEFAULT).x;
        assertTrue(natural > text);
        combo().setSize(natural, combo().getSize().y);
        robot.settle();
        assertEquals(LONG, combo().getText());
        assertEquals(List.of(), Repaints.whileIdle(robot));
    }

    @Test
    void arrowKeysChooseTheNextAndMakeTheFormerWholeAgain() {
        list.show(WORDS, 1);
        goThere();
        robot.key(SWT.ARROW_DOWN);
        robot.waitFor("the next", () -> heard.equals(List.of(OTHER)));
        assertEquals(2, list.chosen());
        assertTrue(combo().getText().endsWith("\u2026"), combo()::getText);
        assertEquals(LONG, combo().getItem(1));
        robot.key(SWT.ARROW_UP);
        robot.key(SWT.ARROW_UP);
        robot.waitFor("the first", () -> heard.equals(List.of(OTHER, LONG, SHORT)));
        assertTrue(combo().isFocusControl());
        assertEquals(WORDS, List.of(combo().getItems()));
    }

    @Test
    void entryIsChosenWithTheMouse() {
        list.show(WORDS, 1);
        robot.click(combo());
        robot.key(SWT.ARROW_DOWN);
        robot.key(SWT.CR);
        robot.waitFor("the last", () -> heard.equals(List.of(OTHER)));
        assertEquals(OTHER, list.text());
    }

    @Test
    void otherEntriesLeaveTheFocusWhereItIs() {
        list.show(WORDS, 1);
        goThere();
        list.show(List.of(LONG, "New"), 1);
        robot.settle();
        assertTrue(combo().isFocusControl());
        assertEquals("New", combo().getText());
        list.show(List.of("One"), 0);
        list.show(List.of("Two"), 0);
        robot.settle();
        assertTrue(combo().isFocusControl());
        assertEquals(List.of("Two"), List.of(combo().getItems()));
        assertEquals(List.of(), heard);
    }

    @Test
    void noneIsChosenWhereNoneIsAskedFor() {
        list.show(WORDS, -1);
        assertEquals("", list.text());
        assertEquals(-1, combo().getSelectionIndex());
        list.choose(2);
        assertEquals(OTHER, list.text());
        list.show(List.of(SHORT), 2);
        assertEquals(-1, list.chosen());
    }

    @Test
    void ofManyEntriesOnlyTheChosenOneIsThereUntilSomebodyComes() {
        List<String> many = IntStream.range(0, 200).mapToObj(i -> "Line " + i).toList();
        list.show(many, 7);
        assertEquals(List.of("Line 7"), List.of(combo().getItems()));
        assertEquals(7, list.chosen());
        goThere();
        assertEquals(many, List.of(combo().getItems()));
        robot.key(SWT.ARROW_DOWN);
        robot.waitFor("the next", () -> heard.equals(List.of("Line 8")));
        assertEquals(8, list.chosen());
    }
}
