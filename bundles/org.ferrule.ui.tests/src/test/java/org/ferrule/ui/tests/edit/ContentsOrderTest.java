/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.emf.common.command.Command;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.ferrule.model.RuleSet;
import org.ferrule.ui.tests.robot.DragAndDrop;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Trees;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Elements in a tree of contents are put into another order, several at a time, and removed together. */
class ContentsOrderTest {

    private static final List<String> FIGURES = List.of("inner diameter", "outer diameter", "crossing profile",
            "wire diameter", "inner diameter");

    private static final int MARGIN = 6;
    private static final int DARK = 90;

    private EditorFixture fixture;
    private Robot robot;

    @BeforeEach
    void open() throws CoreException {
        String spans = IntStream.range(0, FIGURES.size()).mapToObj(i -> "{\"figure\": \"" + FIGURES.get(i)
                + "\", \"below\": \"0.0" + (i + 1) + " mm\", \"above\": \"0.01 mm\"}")
                .collect(Collectors.joining(", "));
        fixture = new EditorFixture(Samples.RULES_FILE, """
                {"format": "ferrule.rules", "version": 1, "title": "Sample rules",
                 "spans": [%s], "clearances": [{"required": "0.05 mm"}]}""".formatted(spans));
        robot = fixture.robot();
    }

    @AfterEach
    void close() throws CoreException {
        fixture.close();
    }

    private List<String> order() {
        RuleSet rules = (RuleSet) fixture.editor().session().document().orElseThrow();
        return rules.getSpans().stream().map(span -> span.getBelow().text().substring(3, 4)).toList();
    }

    private Command lastEdit() {
        return fixture.editor().session().nextUndo();
    }

    private Tree tree() {
        return Widgets.first(fixture.body(), Tree.class, any -> true).orElseThrow();
    }

    private TreeItem group(String name) {
        return Stream.of(tree().getItems()).filter(item -> item.getText().startsWith(name)).findFirst().orElseThrow();
    }

    private TreeItem span(int place) {
        return group("Spans").getItem(place);
    }

    /** Posted clicks tell no widget of the toolkit which modifiers are held, so this one is told. */
    private void select(TreeItem... items) {
        tree().setFocus();
        tree().setSelection(items);
        tree().notifyListeners(SWT.Selection, new Event());
        robot.settle();
    }

    private static Point lowerHalf(TreeItem item) {
        Rectangle row = item.getBounds();
        return new Point(row.x + 5, row.y + row.height - 2);
    }

    private static Point upperHalf(TreeItem item) {
        Rectangle row = item.getBounds();
        return new Point(row.x + 5, row.y + 2);
    }

    private List<String> selected() {
        return Stream.of(tree().getSelection()).map(item -> order().get(item.getParentItem().indexOf(item))).toList();
    }

    @Test
    void elementsSelectedByKeysAreMovedByKeysAndUndone() {
        Trees.click(robot, span(1));
        robot.keyWith(SWT.SHIFT, SWT.ARROW_DOWN);
        robot.waitFor("two selected elements", () -> tree().getSelectionCount() == 2);
        Table table = Widgets.first(fixture.body(), Table.class, any -> true).orElseThrow();
        assertEquals(2, table.getItemCount(), "both stand side by side");
        new ScreenPicture().take("rules-two-selected");
        robot.keyWith(SWT.ALT, SWT.ARROW_DOWN);
        robot.waitFor("one place down", () -> order().equals(List.of("1", "4", "2", "3", "5")));
        assertEquals("Move of 2 objects", lastEdit().getLabel());
        robot.keyWith(SWT.ALT, SWT.ARROW_DOWN);
        robot.waitFor("the end of the list", () -> order().equals(List.of("1", "4", "5", "2", "3")));
        robot.waitFor("no way further down", () -> !Widgets.button(fixture.body(), "Down").isEnabled());
        robot.keyWith(SWT.ALT, SWT.ARROW_DOWN);
        robot.keyWith(SWT.ALT, SWT.ARROW_UP);
        robot.waitFor("one place up", () -> order().equals(List.of("1", "4", "2", "3", "5")));
        robot.waitFor("the same elements selected", () -> selected().equals(List.of("2", "3")));
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("one step back", () -> order().equals(List.of("1", "4", "5", "2", "3")));
    }

    @Test
    void selectedElementsThatAreDraggedLandTogetherAndOneUndoPutsThemBack() {
        select(span(0), span(2));
        assertTrue(new DragAndDrop(robot, tree(), upperHalf(span(2))).moveTo(tree(), lowerHalf(span(3))));
        robot.waitFor("the other order", () -> order().equals(List.of("2", "4", "1", "3", "5")));
        robot.waitFor("the same elements selected", () -> selected().equals(List.of("1", "3")));
        new ScreenPicture().take("rules-moved");
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("the former order", () -> order().equals(List.of("1", "2", "3", "4", "5")));
        assertNull(lastEdit());
    }

    @Test
    void elementsAreDraggedUpToo() {
        select(span(2), span(4));
        assertTrue(new DragAndDrop(robot, tree(), upperHalf(span(4))).moveTo(tree(), upperHalf(span(0))));
        robot.waitFor("the other order", () -> order().equals(List.of("3", "5", "1", "2", "4")));
    }

    @Test
    void elementsStayInTheirGroup() {
        select(span(0), span(2));
        TreeItem clearance = group("Required clearances").getItem(0);
        new DragAndDrop(robot, tree(), upperHalf(span(0))).moveTo(tree(), lowerHalf(clearance));
        assertNull(lastEdit());
        select(span(0), clearance);
        assertFalse(new DragAndDrop(robot, tree(), upperHalf(span(0))).moveTo(tree(), lowerHalf(span(3))),
                "elements of two groups are not moved together");
        assertNull(lastEdit());
    }

    /** How dark the darkest part of a button is: 0 is black. */
    private int darkest(Button button) {
        ImageData pixels = new ScreenPicture().take("button", new Rectangle(button.toDisplay(0, 0).x + MARGIN,
                button.toDisplay(0, 0).y + MARGIN, button.getSize().x - 2 * MARGIN, button.getSize().y - 2 * MARGIN));
        return IntStream.range(0, pixels.width * pixels.height)
                .map(i -> pixels.palette.getRGB(pixels.getPixel(i % pixels.width, i / pixels.width)).green).min()
                .orElseThrow();
    }

    @Test
    void whatCannotBeDoneNowLooksLikeIt() {
        Button up = Widgets.button(fixture.body(), "Up");
        Trees.click(robot, span(2));
        robot.waitFor("a way up", () -> up.isEnabled() && darkest(up) < DARK);
        Trees.click(robot, span(0));
        robot.waitFor("no way up", () -> !up.isEnabled() && darkest(up) > DARK);
    }

    @Test
    void selectedElementsAreRemovedInOneStep() {
        select(span(0), span(2));
        robot.clickUntil("three elements left", Widgets.button(fixture.body(), "Remove"),
                () -> order().equals(List.of("2", "4", "5")));
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("all elements again", () -> order().equals(List.of("1", "2", "3", "4", "5")));
    }
}
