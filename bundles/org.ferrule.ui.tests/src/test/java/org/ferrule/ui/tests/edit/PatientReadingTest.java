/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.edit;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.stream.Stream;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.jface.dialogs.ProgressMonitorDialog;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.ide.IDE;
import org.ferrule.io.json.JsonDocuments;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.samples.LargeLibrary;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.edit.DocumentEditor;
import org.ferrule.ui.edit.PatientReading;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.Projects;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.Test;

/** A large file is read beside the window, and that can be cancelled. */
class PatientReadingTest {

    private static final String NAME = "large.devices.json";
    /** Two megabytes. */
    private static final int DEVICES = 2_000;
    private static final int LOOK_AGAIN_MS = 300;
    private static final int TRIES = 500;

    private final Robot robot = new Robot();
    private final Display display = Display.getCurrent();
    private boolean cancelled;

    private static String large() {
        return new String(new JsonDocuments().write(LargeLibrary.of(DEVICES)), StandardCharsets.UTF_8);
    }

    private static DeviceLibrary library(DocumentSession session) {
        return (DeviceLibrary) session.document().orElseThrow();
    }

    @Test
    void largeFileOpensLikeAnyOther() throws CoreException {
        try (EditorFixture fixture = new EditorFixture(NAME, large())) {
            DocumentSession session = fixture.editor().session();
            assertEquals(DEVICES, library(session).getDevices().size());
            assertTrue(session.editable());
            assertFalse(session.willBeReordered());
        }
    }

    @Test
    void copyOfALargeFileThatWasMadeWithItsReadingFollowsTheChanges() throws CoreException {
        try (EditorFixture fixture = new EditorFixture(NAME, large())) {
            DocumentSession session = fixture.editor().session();
            session.set(library(session).getDevices().get(1), Literals.DEVICE_PARTS__NAME, "another name");
            assertArrayEquals(session.toBytes(), session.snapshot());
            assertFalse(session.willBeReordered());
            session.undo();
            assertEquals(large(), new String(session.snapshot(), StandardCharsets.UTF_8));
        }
    }

    @Test
    void copyOfALargeFileIsThatOfTheFileReadLast() throws CoreException {
        try (EditorFixture fixture = new EditorFixture(NAME, large())) {
            DocumentSession session = fixture.editor().session();
            session.set(library(session).getDevices().get(1), Literals.DEVICE_PARTS__NAME, "another name");
            session.revert();
            session.set(library(session).getDevices().get(2), Literals.DEVICE_PARTS__NAME, "a third name");
            assertArrayEquals(session.toBytes(), session.snapshot());
        }
    }

    @Test
    void largeFileThatWasWrittenByHandIsSaidToBePutInOrder() throws CoreException {
        try (EditorFixture fixture = new EditorFixture(NAME, large() + "\n")) {
            DocumentSession session = fixture.editor().session();
            session.set(library(session).getDevices().get(1), Literals.DEVICE_PARTS__NAME, "another name");
            assertTrue(session.willBeReordered());
            assertArrayEquals(session.toBytes(), session.snapshot());
        }
    }

    @Test
    void whatTakesLongIsShownAndCanBeCancelled() {
        CountDownLatch never = new CountDownLatch(1);
        clickCancel();
        IStatus status = assertThrows(CoreException.class, () -> PatientReading.inBackground(NAME, () -> {
            never.await();
            return NAME;
        })).getStatus();
        assertEquals(IStatus.CANCEL, status.getSeverity());
        assertEquals(NAME + " was not opened: cancelled", status.getMessage());
    }

    /** Again and again until the dialog is there, says what is done, and is closed. */
    private void clickCancel() {
        display.timerExec(LOOK_AGAIN_MS, () -> {
            Optional<Shell> dialog = Stream.of(display.getShells()).filter(Shell::isVisible)
                    .filter(shell -> "Progress Information".equals(shell.getText())).findFirst();
            dialog.filter(PatientReadingTest::tellsTheFile).ifPresent(shell -> {
                new ScreenPicture().take("reading-large-file");
                cancelled = true;
                robot.click(Widgets.button(shell, "Cancel"));
            });
            if (!cancelled || dialog.isPresent()) {
                clickCancel();
            }
        });
    }

    private static boolean tellsTheFile(Shell dialog) {
        return Widgets.all(dialog, Label.class).anyMatch(label -> ("Reading " + NAME).equals(label.getText()));
    }

    @Test
    void noEditorIsLeftOfAnOpeningThatWasCancelledAndTheFileCanBeOpenedAgain() throws CoreException {
        IProject project = Projects.create("Large");
        try {
            IFile file = Projects.write(project, NAME,
                    new String(new JsonDocuments().write(LargeLibrary.of(3 * DEVICES)), StandardCharsets.UTF_8));
            int before = EditorFixture.page().getEditorReferences().length;
            display.asyncExec(() -> cancelBeforeTheDialogIsShown(TRIES));
            assertFalse(IDE.openEditor(EditorFixture.page(), file) instanceof DocumentEditor);
            robot.waitFor("no editor", () -> EditorFixture.page().getEditorReferences().length == before);
            new ScreenPicture().take("opening-cancelled");
            assertTrue(IDE.openEditor(EditorFixture.page(), file) instanceof DocumentEditor);
        } finally {
            EditorFixture.page().closeAllEditors(false);
            robot.waitForJobs();
            Projects.delete(project);
        }
    }

    /** It is shown after a while only, when a quick machine has read the file. */
    private void cancelBeforeTheDialogIsShown(int tries) {
        Stream.of(display.getShells()).map(Shell::getData).filter(ProgressMonitorDialog.class::isInstance)
                .map(ProgressMonitorDialog.class::cast).findFirst()
                .ifPresentOrElse(dialog -> dialog.getProgressMonitor().setCanceled(true), () -> {
                    if (tries > 0) {
                        display.timerExec(1, () -> cancelBeforeTheDialogIsShown(tries - 1));
                    }
                });
    }

    @Test
    void failureIsThatOfTheReading() {
        CoreException failure = assertThrows(CoreException.class, () -> PatientReading.inBackground(NAME, () -> {
            throw new IOException("the disk is gone");
        }));
        assertEquals(NAME + " cannot be read", failure.getStatus().getMessage());
        assertEquals("the disk is gone", failure.getStatus().getException().getMessage());
    }
}
