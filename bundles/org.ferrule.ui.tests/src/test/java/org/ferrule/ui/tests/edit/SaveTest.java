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
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.Optional;

import org.eclipse.core.resources.IFileState;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Text;
import org.ferrule.ui.internal.document.ContentHash;
import org.ferrule.ui.internal.document.SafeSave;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Saving: what is written, what local history keeps, and what happens when it fails. */
class SaveTest {

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

    private void type(String text) {
        robot.replace(Widgets.labelled(fixture.body(), Samples.REQUIRED, Text.class), text);
        robot.waitFor("a dirty editor", () -> fixture.editor().isDirty());
    }

    private static String text(IFileState state) throws CoreException, IOException {
        try (InputStream stream = state.getContents()) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void savesAOneLineChange() throws CoreException, IOException {
        type("0.07 mm");
        robot.key(SWT.CR);
        robot.keys(SWT.CTRL, 's');
        robot.waitFor("a clean editor", () -> !fixture.editor().isDirty());
        assertEquals(Samples.RULES.replace("0.05 mm", "0.07 mm"), fixture.text());
    }

    @Test
    void savesWhatIsStillInTheField() throws CoreException, IOException {
        type("0.07 mm");
        robot.keys(SWT.CTRL, 's');
        robot.waitFor("a clean editor", () -> !fixture.editor().isDirty());
        assertEquals(Samples.RULES.replace("0.05 mm", "0.07 mm"), fixture.text());
    }

    @Test
    void localHistoryKeepsTheFormerState() throws CoreException, IOException {
        type("0.07 mm");
        robot.keys(SWT.CTRL, 's');
        robot.waitFor("a clean editor", () -> !fixture.editor().isDirty());
        IFileState[] history = fixture.file().getHistory(null);
        assertEquals(1, history.length);
        assertEquals(Samples.RULES, text(history[0]));
    }

    @Test
    void savedFileIsInStepWithTheWorkspace() {
        type("0.07 mm");
        robot.keys(SWT.CTRL, 's');
        robot.waitFor("a clean editor", () -> !fixture.editor().isDirty());
        assertTrue(fixture.file().isSynchronized(IResource.DEPTH_ZERO));
    }

    @Test
    void failureLeavesTheFileAsItWas() throws CoreException, IOException {
        SafeSave failing = new SafeSave((file, content) -> {
            throw new IOException("the disk is full");
        });
        CoreException thrown = assertThrows(CoreException.class,
                () -> failing.save(fixture.file(), Optional.empty(), new byte[10], null));
        assertTrue(thrown.getMessage().contains("the disk is full"), thrown.getMessage());
        assertEquals(Samples.RULES, fixture.text());
    }

    @Test
    void interruptedWriterLeavesTheFormerFileWhole() throws CoreException, IOException {
        byte[] before = fixture.text().getBytes(StandardCharsets.UTF_8);
        byte[][] seen = new byte[1][];
        SafeSave looking = new SafeSave((file, content) -> {
            seen[0] = Files.readAllBytes(file);
            throw new IOException("killed here");
        });
        assertThrows(CoreException.class,
                () -> looking.save(fixture.file(), Optional.of(ContentHash.of(before)), new byte[10], null));
        assertArrayEquals(before, seen[0], "keeping history must not touch the content");
    }

    @Test
    void handOrderedDocumentIsPutInOrderBySaving() throws CoreException, IOException {
        fixture.close();
        fixture = new EditorFixture(Samples.RULES_FILE,
                Samples.RULES.replace("\"below\": \"0.01 mm\",\n      \"above\": \"0.01 mm\"",
                        "\"above\": \"0.01 mm\",\n      \"below\": \"0.01 mm\""));
        fixture.reveal(Samples.RULE);
        assertTrue(fixture.editor().session().willBeReordered());
        type("0.07 mm");
        robot.keys(SWT.CTRL, 's');
        robot.waitFor("a clean editor", () -> !fixture.editor().isDirty());
        assertEquals(Samples.RULES.replace("0.05 mm", "0.07 mm"), fixture.text());
        assertFalse(fixture.editor().session().willBeReordered());
    }
}
