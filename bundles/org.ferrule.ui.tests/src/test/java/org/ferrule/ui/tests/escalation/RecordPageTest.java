/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.escalation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.CTabItem;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.forms.widgets.ScrolledForm;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.ide.IDE;
import org.ferrule.engine.closed.Standing;
import org.ferrule.ui.WorkbenchIds;
import org.ferrule.ui.escalation.CaseEditor;
import org.ferrule.ui.escalation.record.RecordPage;
import org.ferrule.ui.look.Colours;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.Projects;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Themes;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The page with the record of a closed case. */
class RecordPageTest {

    private static final String CLOSED = "case-closed-7-fr.case.json";
    private static final String RULES = "house.rules.json";
    private static final int TECHNIQUES = 0;
    private static final int HOUSE_RULES = 1;

    private final Robot robot = new Robot();
    private IProject project;
    private CaseEditor editor;

    @BeforeEach
    void open() throws CommandException, CoreException {
        PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(WorkbenchIds.OPEN_DEMO, null);
        project = ResourcesPlugin.getWorkspace().getRoot().getProject("Demo");
        robot.settle();
        openRecord();
    }

    private void openRecord() throws CoreException {
        editor = (CaseEditor) IDE.openEditor(EditorFixture.page(), project.getFile(CLOSED));
        robot.waitFor("a plan", () -> editor.live().shown().isPresent() && !editor.live().stale());
        clickTab("Record");
        robot.waitFor("the record", () -> page().shown().filter(closed -> !closed.documents().isEmpty()).isPresent());
        robot.settle();
    }

    @AfterEach
    void close() throws CoreException {
        Themes.LIGHT.choose(robot);
        EditorFixture.page().closeAllEditors(false);
        robot.waitForJobs();
        Projects.delete(project);
        robot.settle();
    }

    private void clickTab(String title) {
        CTabFolder tabs = Stream.iterate(editor.getActivePageInstance().getPartControl(), Control::getParent)
                .filter(CTabFolder.class::isInstance).map(CTabFolder.class::cast).findFirst().orElseThrow();
        CTabItem tab = Stream.of(tabs.getItems()).filter(item -> item.getText().equals(title)).findFirst()
                .orElseThrow();
        Rectangle bounds = tab.getBounds();
        robot.clickPainted(tabs, bounds.x + bounds.width / 2, bounds.y + bounds.height / 2);
        robot.waitFor("the page " + title, () -> editor.getActivePageInstance().getTitle().equals(title));
    }

    private RecordPage page() {
        return (RecordPage) editor.findPage(RecordPage.ID);
    }

    private Composite body() {
        return page().getManagedForm().getForm().getBody();
    }

    private List<String> labels() {
        return Widgets.all(body(), Label.class).map(Label::getText).toList();
    }

    private Standing standing(int document) {
        return page().shown().orElseThrow().documents().get(document).standing();
    }

    @Test
    void showsPlanLogTotalsBoxesAndDocuments() {
        List<String> labels = labels();
        assertTrue(labels.contains("Closed on 2026-03-12: the device is across."), labels::toString);
        assertTrue(labels.contains("Stent system 3.00 x 24 mm: lot C300-2510"), labels::toString);
        assertTrue(labels.contains("within it"), labels::toString);
        assertTrue(labels.contains("2028-10-31"), labels::toString);
        assertTrue(labels.contains("unchanged"), labels::toString);
        assertTrue(labels.contains("changed since"), labels::toString);
        new ScreenPicture().take("record");
    }

    @Test
    void canBeReadInTheDarkAndWithTheWholeWindow() throws CoreException {
        EditorFixture.page().closeAllEditors(false);
        Themes.DARK.choose(robot);
        openRecord();
        EditorFixture.page().setPartState(EditorFixture.page().getReference(editor), IWorkbenchPage.STATE_MAXIMIZED);
        robot.settle();
        new ScreenPicture().take("record-dark");
        Label changed = Widgets.first(body(), Label.class, label -> label.getText().equals("changed since"))
                .orElseThrow();
        robot.waitFor("the colour of what should be seen", () -> changed.getForeground().equals(Colours.error()));
        EditorFixture.page().setPartState(EditorFixture.page().getReference(editor), IWorkbenchPage.STATE_RESTORED);
    }

    @Test
    void nothingIsCutOffToTheRight() {
        ScrolledForm form = page().getManagedForm().getForm();
        int edge = form.toDisplay(form.getClientArea().width, 0).x;
        Widgets.all(body(), Control.class).forEach(control -> {
            Rectangle bounds = control.getBounds();
            assertTrue(control.getParent().toDisplay(bounds.x + bounds.width, 0).x <= edge, control::toString);
        });
    }

    @Test
    void documentsAreComparedAgainWhenTheyChangeOnDiskOrGo() throws CoreException {
        assertEquals(Standing.CHANGED, standing(TECHNIQUES));
        assertEquals(Standing.UNCHANGED, standing(HOUSE_RULES));
        IFile rules = project.getFile(RULES);
        byte[] before = rules.readAllBytes();
        rules.setContents(new ByteArrayInputStream((new String(before, StandardCharsets.UTF_8) + "\n")
                .getBytes(StandardCharsets.UTF_8)), true, false, null);
        robot.waitFor("another document", () -> standing(HOUSE_RULES) == Standing.CHANGED);
        rules.setContents(new ByteArrayInputStream(before), true, false, null);
        robot.waitFor("the same again", () -> standing(HOUSE_RULES) == Standing.UNCHANGED);
        rules.delete(true, null);
        robot.waitFor("no document", () -> standing(HOUSE_RULES) == Standing.NOT_FOUND);
        robot.waitFor("the words", () -> labels().contains("not found"));
        assertTrue(labels().contains("Stent system 3.00 x 24 mm: lot C300-2510"), "the record is still there");
        new ScreenPicture().take("record-not-found");
    }

    @Test
    void isCopiedByButtonAndByKeyWithItsFingerprintsInFull() {
        putIntoClipboard("before");
        robot.click(Widgets.button(body(), "Copy record"));
        robot.waitFor("the record in the clipboard", () -> clipboard().contains("Stent beside a second, stiffer wire"));
        String whole = clipboard();
        assertTrue(whole.contains("a5951ab30033d5bbebc2b56daf0a3dee4fc23cc31b08aaacef4b4a8f5741e60a"), whole);
        putIntoClipboard("before");
        robot.keys(SWT.CTRL, 'c');
        robot.waitFor("the record again", () -> clipboard().equals(whole));
    }

    private static String clipboard() {
        Clipboard clipboard = new Clipboard(Display.getCurrent());
        try {
            return String.valueOf(clipboard.getContents(TextTransfer.getInstance()));
        } finally {
            clipboard.dispose();
        }
    }

    private static void putIntoClipboard(String text) {
        Clipboard clipboard = new Clipboard(Display.getCurrent());
        try {
            clipboard.setContents(new Object[] { text }, new TextTransfer[] { TextTransfer.getInstance() });
        } finally {
            clipboard.dispose();
        }
    }

    @Test
    void nothingOnItCanBeEdited() {
        assertFalse(editor.session().editable());
        assertEquals(List.of("Copy record"), Widgets.all(body(), Button.class)
                .map(button -> button.getText().replace("&", "")).toList());
    }
}
