/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;

import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.ide.IDE;
import org.ferrule.ui.edit.DocumentEditor;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.SecondWorkbench;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two windows on one file are two views of one document; a second process on one workspace is refused. */
class TwoWindowsTest {
    private EditorFixture fixture;
    private Robot robot;
    private IWorkbenchWindow second;
    private Rectangle before;

    @BeforeEach
    void open() throws CoreException {
        fixture = new EditorFixture(Samples.RULES_FILE, Samples.RULES);
        robot = fixture.robot();
        fixture.reveal(Samples.RULE);
        before = first().getBounds();
    }

    private Shell first() {
        return fixture.editor().getSite().getShell();
    }

    @AfterEach
    void close() throws CoreException {
        if (second != null) {
            second.getActivePage().closeAllEditors(false);
            second.close();
            robot.waitFor("one window", () -> PlatformUI.getWorkbench().getWorkbenchWindowCount() == 1);
            first().forceActive();
            robot.waitFor("the first window", () -> PlatformUI.getWorkbench().getActiveWorkbenchWindow() != null);
        }
        first().setBounds(before);
        fixture.close();
    }

    private DocumentEditor openInSecondWindow() throws CoreException {
        second = PlatformUI.getWorkbench().openWorkbenchWindow(ResourcesPlugin.getWorkspace().getRoot());
        robot.settle();
        DocumentEditor other = (DocumentEditor) IDE.openEditor(second.getActivePage(), fixture.file());
        other.reveal(Samples.RULE);
        robot.waitForJobs();
        return other;
    }

    private static Text field(DocumentEditor editor) {
        return Widgets.labelled(editor.getActivePageInstance().getPartControl().getParent(), Samples.REQUIRED,
                Text.class);
    }

    private void type(DocumentEditor editor, String text) {
        editor.getSite().getShell().forceActive();
        robot.replace(field(editor), text);
        robot.key(SWT.CR);
        robot.waitFor(text, () -> editor.session().dirty() && field(editor).getText().equals(text));
    }

    /** Without a window manager windows lie where they like: side by side the mouse reaches both. */
    private void putSideBySide() {
        Rectangle all = PlatformUI.getWorkbench().getDisplay().getPrimaryMonitor().getClientArea();
        second.getShell().setBounds(all.width / 2, 0, all.width / 2, all.height);
        first().setBounds(0, 0, all.width / 2, all.height);
        robot.pause(500);
    }

    @Test
    void editInOneWindowShowsInTheOtherAndOneSaveWritesBoth() throws CoreException, IOException {
        DocumentEditor other = openInSecondWindow();
        putSideBySide();
        assertSame(fixture.editor().session(), other.session());
        type(other, "0.07 mm");
        robot.waitFor("the edit in the first window", () -> field(fixture.editor()).getText().equals("0.07 mm"));
        assertTrue(fixture.editor().isDirty());
        type(fixture.editor(), "0.08 mm");
        robot.waitFor("the edit in the second window", () -> field(other).getText().equals("0.08 mm"));
        robot.keys(SWT.CTRL, 's');
        robot.waitFor("both clean", () -> !other.isDirty() && !fixture.editor().isDirty());
        assertEquals(Samples.RULES.replace("0.05 mm", "0.08 mm"), fixture.text());
    }

    @Test
    void undoInOneWindowTakesBackTheEditOfTheOther() throws CoreException {
        DocumentEditor other = openInSecondWindow();
        putSideBySide();
        type(other, "0.07 mm");
        first().forceActive();
        robot.click(field(fixture.editor()));
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("the former text", () -> field(other).getText().equals("0.05 mm"));
        assertFalse(other.isDirty());
    }

    @Test
    void closingOneWindowKeepsTheUnsavedEditInTheOther() throws CoreException {
        DocumentEditor other = openInSecondWindow();
        putSideBySide();
        type(other, "0.07 mm");
        assertTrue(second.close(), "asks nothing");
        robot.waitFor("one window", () -> PlatformUI.getWorkbench().getWorkbenchWindowCount() == 1);
        second = null;
        assertTrue(fixture.editor().isDirty());
        assertEquals("0.07 mm", field(fixture.editor()).getText());
    }

    @Test
    void secondProcessOnTheWorkspaceIsRefusedAndSaysWhy(@TempDir Path folder) throws IOException {
        Path workspace = ResourcesPlugin.getWorkspace().getRoot().getLocation().toPath();
        try (SecondWorkbench refused = SecondWorkbench.start(folder, workspace, Map.of())) {
            robot.waitForOther("the message", () -> refused.output().contains("already open") || !refused.running());
            assertTrue(refused.output().contains("Ferrule is already open on the workspace " + workspace),
                    refused::output);
        }
        assertSame(fixture.editor(), EditorFixture.page().getActiveEditor());
    }
}
