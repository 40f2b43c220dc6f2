/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.ferrule.ui.document.SaveConflictException;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Another program changes or deletes the file of an editor. */
class OtherProgramTest {

    private static final int PAUSE_MS = 300;
    private static final String THEIRS = Samples.RULES.replace("0.05 mm", "0.09 mm");

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

    private void makeDirty() {
        robot.replace(field(), "0.07 mm");
        robot.key(SWT.CR);
        robot.waitFor("the change", () -> fixture.editor().session().nextUndo() != null);
    }

    private void writeTheirs() throws IOException {
        Files.writeString(Path.of(fixture.file().getLocationURI()), THEIRS);
    }

    /** Presses the button of the question until it is answered: a press before the dialog is painted has no effect. */
    private void answer(String button) {
        Display display = Display.getCurrent();
        display.timerExec(PAUSE_MS, new Runnable() {
            private boolean asked;

            @Override
            public void run() {
                Button found = question(button);
                asked |= found != null;
                if (found != null || !asked) {
                    display.timerExec(PAUSE_MS, this);
                }
                if (found != null) {
                    robot.click(found);
                }
            }
        });
    }

    private static Button question(String button) {
        for (Shell shell : Display.getCurrent().getShells()) {
            Button found = Widgets.first(shell, Button.class, b -> b.getText().replace("&", "").equals(button))
                    .orElse(null);
            if (found != null) {
                return found;
            }
        }
        return null;
    }

    @Test
    void cleanEditorFollows() throws CoreException, IOException {
        writeTheirs();
        fixture.file().refreshLocal(IResource.DEPTH_ZERO, null);
        robot.waitFor("their figure", () -> {
            fixture.editor().reveal(Samples.RULE);
            return field().getText().equals("0.09 mm");
        });
    }

    @Test
    void saveOverAChangeThatNobodyHasNoticedIsRefused() throws CoreException, IOException {
        makeDirty();
        writeTheirs();
        assertThrows(SaveConflictException.class, () -> fixture.editor().session().save(null));
        assertEquals(THEIRS, fixture.text());
        assertTrue(fixture.editor().isDirty());
        answer("Keep Mine");
        robot.waitFor("the answer", () -> !fixture.editor().session().conflict());
    }

    @Test
    void dirtyEditorAsksAndKeepsMine() throws CoreException, IOException {
        makeDirty();
        writeTheirs();
        answer("Keep Mine");
        fixture.file().refreshLocal(IResource.DEPTH_ZERO, null);
        robot.pause(1500);
        robot.waitFor("an answered question", () -> !fixture.editor().session().conflict());
        assertTrue(fixture.editor().isDirty());
        fixture.editor().session().save(null);
        assertEquals(Samples.RULES.replace("0.05 mm", "0.07 mm"), fixture.text());
        assertEquals(THEIRS.length(), fixture.file().getHistory(null)[0].getContents().readAllBytes().length);
    }

    @Test
    void dirtyEditorAsksAndTakesTheirs() throws CoreException, IOException {
        makeDirty();
        writeTheirs();
        answer("Take Theirs");
        fixture.file().refreshLocal(IResource.DEPTH_ZERO, null);
        robot.waitFor("a clean editor", () -> !fixture.editor().isDirty());
        fixture.reveal(Samples.RULE);
        assertEquals("0.09 mm", field().getText());
    }

    @Test
    void cleanEditorOfADeletedFileCloses() throws CoreException {
        fixture.file().delete(true, null);
        robot.waitFor("no editor", () -> EditorFixture.page().getEditorReferences().length == 0);
    }
}
