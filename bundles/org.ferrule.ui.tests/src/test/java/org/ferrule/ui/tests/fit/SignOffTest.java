/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PartInitException;
import org.ferrule.model.FitChart;
import org.ferrule.model.ModelPackage;
import org.ferrule.quantity.Dimension;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.fit.matrix.Side;
import org.ferrule.ui.fit.page.PaperContent;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A chart is signed off beside its matrix, and says so when that holds no more. */
class SignOffTest {

    private static final String CHART = "balloons-through-guides.chart.json";
    private static final String GUIDES = "access-and-guides.devices.json";
    private static final String GUIDE = "kes-guide-6fr-right-100";

    private ChartFixture fixture;
    private Robot robot;

    @BeforeEach
    void open() throws CommandException, PartInitException {
        fixture = ChartFixture.ofDemo(CHART);
        robot = fixture.robot();
        robot.waitForJobs();
        fixture.editor().matrix().side().show(true);
        robot.settle();
    }

    @AfterEach
    void close() throws CoreException {
        fixture.editor().matrix().side().show(false);
        fixture.close();
    }

    private Composite side() {
        return fixture.editor().matrix().side().body();
    }

    private FitChart chart() {
        return fixture.editor().answers().chart().orElseThrow();
    }

    private void press(String text) {
        Button button = Widgets.button(side(), text);
        robot.scrollTo(button);
        robot.moveOver(button);
        String before = said();
        robot.clickUntil("an answer to " + text, button, () -> !said().equals(before));
        robot.settle();
    }

    private String said() {
        return signedText() + Widgets.all(side(), Label.class).map(Label::getText).toList();
    }

    private void signOff(String by) {
        Text name = Widgets.labelled(side(), "Name or initials", Text.class);
        robot.replace(name, by);
        press("Sign off");
    }

    private void signOffAndWait() {
        signOff("ab");
        robot.waitFor("a sign-off in the head", () -> signedText().startsWith("Signed off by ab on "));
    }

    private String signedText() {
        return fixture.editor().matrix().signedText();
    }

    private void narrowTheGuide() {
        DocumentSession library = fixture.session(GUIDES);
        EObject section = fixture.object(GUIDES, "devices[" + GUIDE + "]/lumens[0]/sections[0]");
        library.set(section, ModelPackage.Literals.LUMEN_SECTION__ID, Dimension.parse("0.4 mm"));
    }

    @Test
    void signsOffAndUndoTakesItBack() {
        signOffAndWait();
        new ScreenPicture().take("signed-off");
        assertNotNull(chart().getSignOff());
        assertEquals(fixture.table().content().axis(Side.OUTER).total(),
                chart().getSignOff().getRows().size());
        fixture.editor().session().undo();
        robot.waitFor("no sign-off", () -> signedText().isEmpty());
        assertNull(chart().getSignOff());
        fixture.editor().session().redo();
        robot.waitFor("the sign-off again", () -> signedText().startsWith("Signed off by ab on "));
    }

    @Test
    void listsWhatAnEditChangesAndGoesToItsCell() {
        signOffAndWait();
        narrowTheGuide();
        robot.waitFor("a warning in the head", () -> signedText().startsWith("NOT UP TO DATE"));
        List<String> listed = fixture.editor().matrix().signOff().listed();
        assertTrue(listed.contains(GUIDES + ":  > another document"), listed.toString());
        assertTrue(listed.stream().anyMatch(line -> line.endsWith("> blocked")), listed.toString());
        assertTrue(new PaperContent(fixture.editor().answers()).now().orElseThrow().imprint().signedOff().orElseThrow()
                .head().startsWith("NOT UP TO DATE"));
        Table changes = Widgets.first(side(), Table.class,
                table -> table.getColumn(0).getText().equals("Changed")).orElseThrow();
        robot.scrollTo(changes);
        robot.settle();
        new ScreenPicture().take("signed-off-outdated");
        robot.click(changes, 20, changes.getHeaderHeight() + changes.getItemHeight() / 2);
        robot.settle();
        robot.key(SWT.ARROW_DOWN);
        robot.key(SWT.CR);
        robot.waitFor("the cell", () -> fixture.table().selection().pair()
                .filter(pair -> pair.question().outer().device().id().equals(GUIDE)).isPresent());
        fixture.editor().setActivePage("paper");
        robot.waitForJobs();
        robot.settle();
        new ScreenPicture().take("paper-outdated");
        fixture.session(GUIDES).undo();
        robot.waitFor("all as it was", () -> signedText().startsWith("Signed off by ab on "));
    }

    @Test
    void isRefusedWithoutAName() {
        press("Sign off");
        assertRefused("Name who signs off");
    }

    @Test
    void isRefusedWhileALibraryIsNotSaved() throws CoreException {
        narrowTheGuide();
        robot.waitFor("answers", () -> !fixture.editor().answers().stale());
        signOff("ab");
        assertRefused("Save " + GUIDES + " first");
        assertNull(chart().getSignOff());
        fixture.session(GUIDES).save(new NullProgressMonitor());
        press("Sign off");
        robot.waitFor("a sign-off in the head", () -> signedText().startsWith("Signed off by ab on "));
    }

    @Test
    void isRefusedWhileAProblemIsOpen() {
        fixture.editor().session().set(chart().getConditions(), ModelPackage.Literals.CONDITIONS__WIRE, "no-such-wire");
        robot.waitFor("a problem", () -> !fixture.editor().answers().problems().isEmpty()
                && !fixture.editor().answers().stale());
        signOff("ab");
        assertRefused("A problem is open");
    }

    private void assertRefused(String reason) {
        robot.waitFor("the reason \"" + reason + "\"", () -> Widgets.all(side(), Label.class)
                .anyMatch(label -> label.getText().startsWith("Not signed off. " + reason)));
    }
}
