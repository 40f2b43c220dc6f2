/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;

import org.eclipse.jface.action.ActionContributionItem;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.ferrule.ui.fit.FitIds;
import org.ferrule.ui.fit.sums.SumsView;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The calculators in their view. */
class SumsTest {

    private SumsView view;
    private Robot robot;
    private Composite body;

    @BeforeEach
    void open() throws PartInitException {
        view = (SumsView) EditorFixture.page().showView(FitIds.SUMS_VIEW);
        EditorFixture.page().setPartState(EditorFixture.page().getReference(view), IWorkbenchPage.STATE_MAXIMIZED);
        robot = new Robot();
        body = view.answer().picture().getParent().getParent().getParent();
    }

    @AfterEach
    void close() {
        EditorFixture.page().hideView(view);
        robot.settle();
    }

    private void choose(String title) {
        Table list = Widgets.first(body, Table.class, table -> true).orElseThrow();
        TableItem item = Stream.of(list.getItems()).filter(i -> i.getText().equals(title)).findFirst().orElseThrow();
        robot.click(list, item.getBounds().x + 20, item.getBounds().y + item.getBounds().height / 2);
        robot.settle();
    }

    private void fill(String label, String text) {
        robot.replace(Widgets.labelled(body, label, Text.class), text);
        robot.settle();
    }

    private void pack() {
        choose("Side by side in one lumen");
        fill("Device 1", "1.2mm");
        fill("Device 2", "0.047in");
        fill("Device 3", "3Fr");
        robot.waitFor("an answer", () -> view.answer().words().startsWith("Smallest lumen"));
    }

    /** Three discs of 1.2 mm, 1.1938 mm and 1 mm: Descartes' theorem on the radii gives 2.454 mm. */
    @Test
    void packsThreeShaftsWhileTheyAreTyped() {
        pack();
        new ScreenPicture().take("sums-pack");
        double a = 1 / 0.6;
        double b = 1 / (0.047 * 25.4 / 2);
        double c = 1 / 0.5;
        double outer = 2 / Math.abs(a + b + c - 2 * Math.sqrt(a * b + b * c + c * a));
        String words = view.answer().words();
        double told = Double.parseDouble(words.substring(words.indexOf(": ") + 2, words.indexOf(" mm")));
        assertEquals(outer, told, 0.00001);
        assertTrue(view.answer().picture().picture().isPresent(), "the arrangement is drawn");
    }

    @Test
    void aNumberWithoutItsUnitIsAnErrorBelowItsField() {
        choose("Side by side in one lumen");
        fill("Device 1", "3");
        new ScreenPicture().take("sums-error");
        Text field = Widgets.labelled(body, "Device 1", Text.class);
        assertTrue(Widgets.all(field.getParent(), Label.class).map(Label::getText)
                .anyMatch(text -> text.startsWith("expected")), "what is expected stands below the field");
        robot.click(field);
        robot.key(SWT.END);
        robot.type("Fr");
        robot.waitFor("an answer", () -> view.answer().words().startsWith("Smallest lumen"));
    }

    @Test
    void whatDoesNotFitTogetherIsTold() {
        choose("Flow left in a lumen");
        fill("Lumen", "1mm");
        fill("Device 1", "1.2mm");
        robot.waitFor("a refusal", () -> view.answer().words().contains("do not lie in"));
    }

    @Test
    void theAnswerIsCopiedAsText() {
        pack();
        Stream.of(view.getViewSite().getActionBars().getToolBarManager().getItems())
                .filter(ActionContributionItem.class::isInstance).map(ActionContributionItem.class::cast)
                .filter(item -> item.getAction().getText().equals("Copy")).forEach(item -> item.getAction().run());
        Clipboard clipboard = new Clipboard(body.getDisplay());
        String copied = (String) clipboard.getContents(TextTransfer.getInstance());
        clipboard.dispose();
        assertTrue(copied.startsWith("Side by side in one lumen\ndevice 1.2mm, 0.047in, 3Fr\n"), copied);
        assertTrue(copied.contains("Method: "), copied);
    }
}
