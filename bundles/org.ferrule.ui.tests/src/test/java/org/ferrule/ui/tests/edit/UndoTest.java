/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.part.FileEditorInput;
import org.ferrule.ui.WorkbenchIds;
import org.ferrule.ui.edit.DocumentEditor;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Undo and redo, in one editor and across two editors of one file. */
class UndoTest {

    private EditorFixture fixture;
    private Robot robot;

    @BeforeEach
    void open() throws CoreException {
        fixture = new EditorFixture(Samples.RULES_FILE, Samples.RULES);
        robot = fixture.robot();
        fixture.reveal(Samples.RULE);
    }

    @AfterEach
    void close() throws CoreException {
        fixture.close();
    }

    private Text field() {
        return Widgets.labelled(fixture.body(), Samples.REQUIRED, Text.class);
    }

    private void change(String text) {
        robot.replace(field(), text);
        robot.key(SWT.CR);
        robot.waitFor("the change", () -> fixture.editor().session().nextUndo() != null);
    }

    @Test
    void undoRestoresTheFieldAndTheCleanState() {
        change("0.07 mm");
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("the former text", () -> field().getText().equals("0.05 mm"));
        assertFalse(fixture.editor().isDirty());
    }

    @Test
    void redoBringsTheChangeBack() {
        change("0.07 mm");
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("the former text", () -> field().getText().equals("0.05 mm"));
        fixture.editor().session().redo();
        robot.waitFor("the later text", () -> field().getText().equals("0.07 mm"));
    }

    @Test
    void commandsAreNamedAfterWhatTheyChange() {
        change("0.07 mm");
        assertEquals("Change of required clearance", fixture.editor().session().nextUndo().getLabel());
    }

    @Test
    void twoEditorsOfAFileShareTheDocument() throws CoreException {
        IWorkbenchPage page = EditorFixture.page();
        IEditorPart other = page.openEditor(new FileEditorInput(fixture.file()), WorkbenchIds.RULES_EDITOR, true,
                IWorkbenchPage.MATCH_NONE);
        assertSame(fixture.editor().session(), ((DocumentEditor) other).session());
        page.activate(fixture.editor());
        change("0.07 mm");
        robot.waitFor("both dirty", () -> other.isDirty() && fixture.editor().isDirty());
        ((DocumentEditor) other).session().undo();
        robot.waitFor("the former text", () -> field().getText().equals("0.05 mm"));
        assertFalse(other.isDirty());
    }

    @Test
    void closingOneOfTwoEditorsLosesNothing() throws CoreException {
        IWorkbenchPage page = EditorFixture.page();
        IEditorPart other = page.openEditor(new FileEditorInput(fixture.file()), WorkbenchIds.RULES_EDITOR, true,
                IWorkbenchPage.MATCH_NONE);
        page.activate(fixture.editor());
        change("0.07 mm");
        assertTrue(page.closeEditor(other, true), "asks nothing, since the other editor still has the change");
        assertTrue(fixture.editor().isDirty());
        assertEquals("0.07 mm", field().getText());
    }
}
