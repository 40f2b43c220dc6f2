/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.escalation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.ferrule.escalation.plan.WireCheck;
import org.ferrule.model.AttemptOutcome;
import org.ferrule.model.LoggedAttempt;
import org.ferrule.ui.escalation.form.CasePage;
import org.ferrule.ui.escalation.ladder.LadderCanvas;
import org.ferrule.ui.escalation.ladder.LadderPage;
import org.ferrule.ui.escalation.sheet.SheetExport;
import org.ferrule.ui.escalation.sheet.SheetPage;
import org.ferrule.ui.tests.robot.Dialogs;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A case is read, logged by keys, and planned anew at every edit. */
class LadderTest {

    private CaseFixture fixture;

    @BeforeEach
    void open() throws CommandException, CoreException {
        fixture = new CaseFixture();
        fixture.open();
    }

    @AfterEach
    void close() throws CoreException {
        fixture.close();
    }

    private Composite page() {
        return fixture.editor().getActivePageInstance().getPartControl().getParent();
    }

    private List<LoggedAttempt> log() {
        return fixture.document().getLog();
    }

    @Test
    void theStepsStandBelowEachOtherWithWhatTheyTake() {
        List<Integer> numbers = fixture.plan().rungs().stream().map(rung -> rung.number()).toList();
        List<Integer> tops = numbers.stream()
                .map(number -> fixture.editor().ladder().ladder().bounds(number).orElseThrow()).map(b -> b.y).toList();
        new ScreenPicture().take("ladder");
        assertEquals(tops.stream().sorted().toList(), tops);
        assertTrue(fixture.steps().contains("small-balloon"), fixture.steps()::toString);
        assertEquals("A213", fixture.plan().rungs().get(0).taken().get(0).lot().lot());
    }

    @Test
    void budgetsTellWhatIsLeft() {
        assertTrue(fixture.editor().ladder().budgets().contains("70 min left"), fixture.editor().ladder()::budgets);
    }

    @Test
    void theWireCheckIsAlwaysThereAndNothingIsPlannedWithoutTheWire() {
        StyledText words = Widgets.first(page(), StyledText.class, text -> text.getText().contains("orthogonal"))
                .orElseThrow();
        assertTrue(words.isVisible());
        fixture.robot().clickUntil("a statement", Widgets.button(page(), "Not so"),
                () -> fixture.document().getFacts().stream().anyMatch(stated -> !stated.isHolds()));
        fixture.robot().waitFor("a plan that heeds it", () -> Optional.of(WireCheck.DENIED)
                .equals(fixture.editor().live().shown().map(planned -> planned.plan().wireCheck())));
        assertTrue(fixture.plan().rungs().isEmpty());
        new ScreenPicture().take("ladder-no-wire");
        fixture.editor().session().undo();
        fixture.robot().waitFor("the steps again", () -> !fixture.editor().live().stale()
                && !fixture.plan().rungs().isEmpty());
    }

    @Test
    void oneKeyLogsThatTheNextStepFailedAndUndoTakesItBack() {
        List<String> before = fixture.steps();
        fixture.press('f');
        new ScreenPicture().take("ladder-log");
        fixture.enter();
        fixture.robot().waitFor("an entry", () -> log().size() == 1);
        fixture.waitForPlan();
        assertEquals(before.get(0), log().get(0).getMove());
        assertEquals(AttemptOutcome.FAILED, log().get(0).getOutcome());
        assertEquals(0, new BigDecimal("5").compareTo(log().get(0).getMinutes()));
        assertEquals("A213", log().get(0).getUnits().get(0).getLot());
        assertEquals(1, fixture.plan().progress().triesOf(before.get(0)));
        assertTrue(fixture.editor().ladder().budgets().contains("65 min left"), fixture.editor().ladder()::budgets);
        fixture.robot().keys(SWT.MOD1, 'z');
        fixture.robot().waitFor("no entry", () -> log().isEmpty());
        fixture.waitForPlan();
        assertEquals(before, fixture.steps());
        assertFalse(fixture.editor().session().dirty());
    }

    @Test
    void whatItTookCanBeCorrectedBeforeItIsLogged() {
        fixture.press('c');
        fixture.robot().type("12");
        fixture.enter();
        fixture.robot().waitFor("an entry", () -> log().size() == 1);
        assertEquals(AttemptOutcome.CROSSED, log().get(0).getOutcome());
        assertEquals(new BigDecimal("12"), log().get(0).getMinutes());
        fixture.waitForPlan();
        assertTrue(fixture.plan().progress().crossed());
    }

    @Test
    void aNumberThatCannotBeReadIsNotLogged() {
        fixture.press('f');
        for (String wrong : List.of("soon", "-1", "3,5", "1e9")) {
            Text minutes = Widgets.labelled(page(), "Minutes", Text.class);
            fixture.robot().keys(SWT.CTRL, 'a');
            fixture.robot().type(wrong);
            fixture.enter();
            fixture.robot().waitFor("what is wrong with " + wrong, () -> Widgets.first(page(), Label.class,
                    label -> label.isVisible() && label.getText().startsWith("Minutes: expected a number")
                            && label.getText().endsWith("\u201c" + wrong + "\u201d"))
                    .isPresent());
            assertTrue(log().isEmpty());
            assertTrue(minutes.isFocusControl(), "it can be typed anew at once");
            assertEquals(wrong, minutes.getText(), "nothing is lost");
        }
        fixture.robot().key(SWT.ESC);
        fixture.robot().waitFor("the buttons again",
                () -> Widgets.all(page(), Button.class).anyMatch(button -> button.getText().startsWith("F")));
    }

    @Test
    void theArrowKeysSelectSteps() {
        Control canvas = fixture.editor().ladder().ladder().canvas();
        fixture.robot().click(canvas, 4, 4);
        fixture.robot().key(SWT.ARROW_DOWN);
        fixture.robot().settle();
        assertEquals(2, fixture.editor().ladder().ladder().selected().orElseThrow().number());
    }

    @Test
    void aClickSelectsAStep() {
        Rectangle second = fixture.editor().ladder().ladder().bounds(2).orElseThrow();
        fixture.editor().ladder().ladder().select(2);
        fixture.editor().ladder().ladder().select(1);
        fixture.robot().clickPainted(fixture.editor().ladder().ladder().canvas(), second.x + 20, second.y + 5);
        assertEquals(2, fixture.editor().ladder().ladder().selected().orElseThrow().number());
    }

    @Test
    void aFactThatIsTakenBackChangesThePlan() {
        assertTrue(fixture.steps().contains("extension"), fixture.steps()::toString);
        fixture.editor().setActivePage(CasePage.ID);
        fixture.robot().settle();
        new ScreenPicture().take("case-page");
        Button denied = radio("The ostium is free of disease.", "does not hold");
        fixture.robot().click(denied, 8, denied.getSize().y / 2);
        fixture.robot().waitFor("a plan without the extension",
                () -> !fixture.editor().live().stale() && !fixture.steps().contains("extension"));
        fixture.editor().setActivePage(LadderPage.ID);
        fixture.editor().session().undo();
        fixture.robot().waitFor("the extension again",
                () -> !fixture.editor().live().stale() && fixture.steps().contains("extension"));
    }

    @Test
    void theSheetCanBeTakenAlong(@TempDir Path folder) throws IOException, CoreException {
        SheetPage sheet = (SheetPage) fixture.editor().setActivePage(SheetPage.ID);
        fixture.robot().waitFor("the sheet", () -> sheet.sheet().isPresent());
        new ScreenPicture().take("case-sheet");
        Path file = folder.resolve("plan.pdf");
        new SheetExport(EditorFixture.page().getWorkbenchWindow().getShell(), fixture.editor().session().file())
                .write(sheet.sheet().orElseThrow(), file);
        assertEquals("%PDF-", new String(Files.readAllBytes(file), 0, 5, StandardCharsets.US_ASCII));
    }

    private Button radio(String fact, String choice) {
        Control label = Widgets.first(page(), Label.class, l -> l.getText().equals(fact))
                .orElseThrow();
        Composite group = (Composite) Stream.of(label.getParent().getChildren()).dropWhile(c -> c != label).skip(1)
                .findFirst().orElseThrow();
        return Widgets.button(group, choice);
    }

    @Test
    void theDrawingOfASetUpIsCopied() {
        int setup = fixture.plan().rungs().stream().filter(rung -> rung.isSetup()).findFirst().orElseThrow().number();
        LadderCanvas ladder = fixture.editor().ladder().ladder();
        ladder.select(setup);
        fixture.robot().settle();
        assertTrue(ladder.picture().isPresent());
        Rectangle card = ladder.bounds(setup).orElseThrow();
        fixture.robot().clickPainted(ladder.canvas(), card.x + 4, card.y + 4);
        new Dialogs(fixture.robot()).menu(ladder.canvas(), 'v');
        fixture.robot().waitFor("text in the clipboard", () -> copied().startsWith("<?xml"));
        assertTrue(copied().contains(CaseSamples.CASE_FILE), "it says of which case it is");
    }

    private static String copied() {
        Clipboard clipboard = new Clipboard(Display.getCurrent());
        try {
            return clipboard.getContents(TextTransfer.getInstance()) instanceof String text ? text : "";
        } finally {
            clipboard.dispose();
        }
    }
}
