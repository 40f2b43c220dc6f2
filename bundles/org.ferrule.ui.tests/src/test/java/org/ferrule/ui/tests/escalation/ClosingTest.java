/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.ui.tests.escalation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.ide.IDE;
import org.ferrule.model.CaseEnd;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.PlannedTry;
import org.ferrule.model.ShelfDocument;
import org.ferrule.model.TechniqueLibrary;
import org.ferrule.ui.edit.DocumentEditor;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A case is closed by its dialog; what changes can be undone in each document. */
class ClosingTest {

    private CaseFixture fixture;

    @BeforeEach
    void open() throws CommandException, CoreException {
        fixture = new CaseFixture();
        fixture.open();
    }

    @AfterEach
    void close() throws CoreException {
        dialog().ifPresent(Shell::close);
        fixture.close();
    }

    private static Optional<Shell> dialog() {
        return Stream.of(Display.getCurrent().getShells()).filter(shell -> shell.getText().equals("Close case"))
                .filter(Shell::isVisible).findFirst();
    }

    private Composite page() {
        return fixture.editor().getActivePageInstance().getPartControl().getParent();
    }

    private void log(char key) {
        int before = fixture.document().getLog().size();
        fixture.press(key);
        fixture.enter();
        fixture.robot().waitFor("an entry", () -> fixture.document().getLog().size() == before + 1);
        fixture.waitForPlan();
    }

    private Shell ask() {
        fixture.robot().clickUntil("the dialog", Widgets.button(page(), "Close case..."),
                () -> dialog().isPresent());
        return dialog().orElseThrow();
    }

    private static Button agree(Shell dialog) {
        return Widgets.button(dialog, "Close case");
    }

    private DocumentEditor editor(String file) throws CoreException {
        DocumentEditor opened = (DocumentEditor) IDE.openEditor(EditorFixture.page(), fixture.file(file), false);
        EditorFixture.page().activate(fixture.editor());
        fixture.robot().settle();
        return opened;
    }

    private PlannedTry firstTry(DocumentEditor techniques) {
        return ((TechniqueLibrary) techniques.session().document().orElseThrow()).getTechniques().stream()
                .filter(technique -> technique.getId().equals("small-balloon")).findFirst().orElseThrow().getTries()
                .get(0);
    }

    private int units(DocumentEditor shelf) {
        return ((ShelfDocument) shelf.session().document().orElseThrow()).getItems().stream()
                .flatMap(item -> item.getLots().stream()).mapToInt(lot -> lot.getQuantity()).sum();
    }

    @Test
    void theRecordTheCountsAndTheUnitsAreTakenOverAndEachCanBeUndone() throws CoreException {
        log('f');
        String first = fixture.document().getLog().get(0).getMove();
        assertEquals("small-balloon", first);
        DocumentEditor techniques = editor(CaseSamples.TECHNIQUES_FILE);
        DocumentEditor shelf = editor(CaseSamples.SHELF_FILE);
        int before = units(shelf);
        Shell dialog = ask();
        fixture.robot().waitFor("the record", () -> agree(dialog).isEnabled());
        String frozen = Widgets.first(dialog, Text.class, text -> text.getText().contains("Ended:")).orElseThrow()
                .getText();
        assertTrue(frozen.contains("stopped; by the log the device is not across"), frozen);
        assertTrue(frozen.contains("lot A213"), frozen);
        assertTrue(frozen.contains(CaseSamples.SHELF_FILE), frozen);
        new ScreenPicture().take("close-case");
        fixture.robot().clickUntil("the record in the case", agree(dialog),
                () -> fixture.document().getClosing() != null);
        assertEquals(CaseEnd.STOPPED, fixture.document().getClosing().getEnded());
        assertEquals(1, firstTry(techniques).getFailures());
        assertEquals(before - 1, units(shelf));
        assertTrue(techniques.session().dirty() && shelf.session().dirty() && fixture.editor().session().dirty());
        fixture.waitForPlan();
        new ScreenPicture().take("closed-case");
        assertFalse(Widgets.button(page(), "Close case...").isEnabled());
        techniques.session().undo();
        shelf.session().undo();
        fixture.editor().session().undo();
        assertEquals(0, firstTry(techniques).getFailures());
        assertEquals(before, units(shelf));
        assertNull(fixture.document().getClosing());
        assertFalse(techniques.session().dirty() || shelf.session().dirty());
    }

    @Test
    void whatIsNotWantedIsLeftAlone() throws CoreException {
        log('f');
        DocumentEditor techniques = editor(CaseSamples.TECHNIQUES_FILE);
        DocumentEditor shelf = editor(CaseSamples.SHELF_FILE);
        Shell dialog = ask();
        fixture.robot().waitFor("the record", () -> agree(dialog).isEnabled());
        Widgets.all(dialog, Button.class).filter(button -> button.getText().contains("own counts")
                || button.getText().contains("off cabinet")).toList().forEach(this::untick);
        fixture.robot().clickUntil("the record in the case", agree(dialog),
                () -> fixture.document().getClosing() != null);
        assertFalse(techniques.session().dirty() || shelf.session().dirty());
    }

    /** Clicks again where a busy machine has lost a click. */
    private void untick(Button box) {
        for (int i = 0; i < 4 && box.getSelection(); i++) {
            fixture.robot().click(box, 8, box.getSize().y / 2);
            fixture.robot().pause(300);
        }
        assertFalse(box.getSelection(), box::getText);
    }

    @Test
    void anEmptyLogIsRefusedWithTheReason() {
        Shell dialog = ask();
        assertFalse(agree(dialog).isEnabled());
        assertTrue(Widgets.first(dialog, Text.class, text -> text.getText().contains("Nothing is in the log"))
                .isPresent());
        new ScreenPicture().take("close-case-refused");
        fixture.robot().clickUntil("no dialog", Widgets.button(dialog, "Cancel"), () -> dialog().isEmpty());
        assertNull(fixture.document().getClosing());
    }

    @Test
    void aDocumentThatIsNotSavedIsRefusedWithItsName() throws CoreException {
        log('f');
        DocumentEditor techniques = editor(CaseSamples.TECHNIQUES_FILE);
        techniques.session().set(techniques.session().document().orElseThrow(),
                Literals.DOCUMENT__TITLE, "Another title");
        fixture.waitForPlan();
        Shell dialog = ask();
        assertFalse(agree(dialog).isEnabled());
        assertTrue(Widgets.first(dialog, Text.class, text -> text.getText().contains(CaseSamples.TECHNIQUES_FILE
                + "\u201d has changes that are not saved")).isPresent());
    }

    @Test
    void aDayThatCannotBeReadKeepsTheCaseOpen() {
        log('f');
        Shell dialog = ask();
        fixture.robot().waitFor("the record", () -> agree(dialog).isEnabled());
        Text day = Widgets.labelled(dialog, "Day", Text.class);
        fixture.robot().click(day);
        fixture.robot().waitFor("the focus", day::isFocusControl);
        day.selectAll();
        fixture.robot().type("soon");
        fixture.robot().waitFor("no closing", () -> !agree(dialog).isEnabled());
        day.selectAll();
        fixture.robot().type("2026-04-09");
        fixture.robot().waitFor("a day", () -> agree(dialog).isEnabled());
        fixture.robot().clickUntil("the record in the case", agree(dialog),
                () -> fixture.document().getClosing() != null);
        assertEquals("2026-04-09", fixture.document().getClosing().getClosed());
    }
}
