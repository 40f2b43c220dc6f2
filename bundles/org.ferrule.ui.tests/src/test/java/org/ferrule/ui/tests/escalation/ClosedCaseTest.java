/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.escalation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.ferrule.model.CaseEnd;
import org.ferrule.model.Closing;
import org.ferrule.model.ModelFactory;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.ui.escalation.form.CasePage;
import org.ferrule.ui.escalation.ladder.LadderPage;
import org.ferrule.ui.escalation.record.RecordPage;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A closed case is a record: it can be looked at, and is not edited any more. */
class ClosedCaseTest {

    private static final String DAY = "2026-04-02";

    private CaseFixture fixture;

    @BeforeEach
    void open() throws CommandException, CoreException {
        fixture = new CaseFixture();
        fixture.open();
    }

    @AfterEach
    void close() throws CoreException {
        Stream.of(Display.getCurrent().getShells()).filter(shell -> shell.getText().equals("Close case"))
                .forEach(Shell::close);
        fixture.close();
    }

    private Composite page() {
        return fixture.editor().getActivePageInstance().getPartControl().getParent();
    }

    private void closeCase() {
        Closing closing = ModelFactory.eINSTANCE.createClosing();
        closing.setClosed(DAY);
        closing.setEnded(CaseEnd.STOPPED);
        fixture.editor().session().set(fixture.document(), Literals.CASE_DOCUMENT__CLOSING, closing);
        fixture.robot().settle();
        fixture.waitForPlan();
    }

    private void show(String page) {
        fixture.editor().setActivePage(page);
        fixture.robot().settle();
    }

    private Text title() {
        Text title = Widgets.labelled(page(), "Title", Text.class);
        fixture.robot().scrollTo(title);
        return title;
    }

    private void typeIntoTitle(String words) {
        Text title = title();
        fixture.robot().clickUntil("the focus", title, title::isFocusControl);
        fixture.robot().type(words);
        fixture.robot().key(SWT.CR);
        fixture.robot().settle();
    }

    private String message() {
        return Optional.ofNullable(fixture.editor().getActivePageInstance().getManagedForm().getForm().getMessage())
                .orElse("");
    }

    @Test
    void nothingOnItsPageCanBeChanged() {
        closeCase();
        show(CasePage.ID);
        new ScreenPicture().take("closed-case-page");
        assertTrue(message().startsWith("Closed on " + DAY), this::message);
        String before = fixture.document().getTitle();
        typeIntoTitle("another");
        assertEquals(before, fixture.document().getTitle());
        assertFalse(Widgets.labelled(page(), "To be spared", Combo.class).isEnabled(), "its aim");
        assertFalse(Widgets.labelled(page(), "Techniques", Text.class).getEditable(), "its techniques");
        assertEquals(0, Widgets.all(page(), Button.class).filter(Button::isEnabled).count(),
                () -> "buttons that would change it: "
                        + Widgets.all(page(), Button.class).filter(Button::isEnabled).map(Button::getText).toList());
    }

    @Test
    void aKeyOfTheLogIsRefusedWithTheReason() {
        closeCase();
        show(LadderPage.ID);
        fixture.press('f');
        assertEquals("Not logged: the case was closed on " + DAY, fixture.editor().ladder().strip().text());
        new ScreenPicture().take("closed-case-key");
        fixture.enter();
        assertTrue(fixture.document().getLog().isEmpty());
        assertTrue(Widgets.all(page(), Button.class)
                .filter(button -> Stream.of("Seen", "Not so").anyMatch(button.getText()::equals))
                .noneMatch(Button::isEnabled), "the wire check is part of the record");
    }

    @Test
    void theRecordHasAPageWhileItIsClosed() {
        assertNull(fixture.editor().findPage(RecordPage.ID));
        closeCase();
        assertNotNull(fixture.editor().findPage(RecordPage.ID));
        show(RecordPage.ID);
        RecordPage record = (RecordPage) fixture.editor().findPage(RecordPage.ID);
        fixture.robot().waitFor("the record", () -> record.shown().isPresent());
        assertEquals(DAY, record.shown().orElseThrow().closed());
        fixture.robot().keys(SWT.MOD1, 'z');
        fixture.robot().waitFor("an open case", () -> fixture.document().getClosing() == null);
        fixture.robot().waitFor("no record", () -> fixture.editor().findPage(RecordPage.ID) == null);
        assertEquals(CasePage.ID, fixture.editor().getActivePageInstance().getId());
        fixture.editor().session().redo();
        fixture.robot().waitFor("the record again", () -> fixture.editor().findPage(RecordPage.ID) != null);
    }

    @Test
    void undoOpensItAgainUntilItIsSaved() throws CoreException {
        closeCase();
        show(CasePage.ID);
        title();
        fixture.robot().keys(SWT.MOD1, 'z');
        fixture.robot().waitFor("an open case", () -> fixture.document().getClosing() == null);
        fixture.waitForPlan();
        assertEquals("", message());
        typeIntoTitle("x");
        fixture.robot().waitFor("another title", () -> fixture.document().getTitle().contains("x"));
        closeCase();
        fixture.editor().session().save(new NullProgressMonitor());
        fixture.robot().settle();
        assertNull(fixture.editor().session().nextUndo());
        assertFalse(fixture.editor().isDirty());
        fixture.robot().keys(SWT.MOD1, 'z');
        fixture.robot().settle();
        assertNotNull(fixture.document().getClosing());
        assertFalse(message().contains("undo"), this::message);
    }
}
