/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.jface.text.ITextSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.texteditor.ITextEditor;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.Projects;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Documents that are broken, newer than the program, or hold a text that cannot be read. */
class OpeningTest {

    private static final String BROKEN = Samples.RULES.replace("\"version\": 1,", "\"version\": 1");

    private EditorFixture fixture;

    private void open(String content) throws CoreException {
        fixture = new EditorFixture(Samples.RULES_FILE, content);
    }

    @AfterEach
    void close() throws CoreException {
        fixture.close();
    }

    private List<String> labels() {
        return Widgets.all(fixture.body(), Label.class).map(Label::getText).toList();
    }

    @Test
    void brokenDocumentSaysWhereItIsBroken() throws CoreException {
        open(BROKEN);
        new ScreenPicture().take("broken-document");
        assertTrue(labels().stream().anyMatch(text -> text.startsWith("Line 4, column ")), labels().toString());
    }

    @Test
    void brokenDocumentIsNeverWritten() throws CoreException, IOException {
        open(BROKEN);
        assertThrows(CoreException.class, () -> fixture.editor().session().save(null));
        assertEquals(BROKEN, fixture.text());
        assertFalse(fixture.editor().isSaveAsAllowed());
    }

    @Test
    void brokenDocumentOpensAsTextAtItsFirstProblem() throws CoreException {
        open(BROKEN);
        fixture.robot().click(Widgets.button(fixture.body(), "Open as text"));
        fixture.robot().waitFor("a text editor",
                () -> EditorFixture.page().getActiveEditor() instanceof ITextEditor);
        ITextEditor text = (ITextEditor) EditorFixture.page().getActiveEditor();
        assertEquals(3, ((ITextSelection) text.getSelectionProvider().getSelection()).getStartLine());
    }

    @Test
    void documentOpensByItselfWhenItsTextIsPutRight() throws CoreException {
        open(BROKEN);
        Projects.write(fixture.file().getProject(), Samples.RULES_FILE, Samples.RULES);
        fixture.robot().waitFor("the rules", () -> fixture.editor().reveal(Samples.RULE));
    }

    @Test
    void newerVersionIsReadOnly() throws CoreException, IOException {
        String newer = Samples.RULES.replace("\"version\": 1", "\"version\": 99");
        open(newer);
        fixture.reveal(Samples.RULE);
        new ScreenPicture().take("newer-version");
        Text field = Widgets.labelled(fixture.body(), Samples.REQUIRED, Text.class);
        fixture.robot().click(field);
        fixture.robot().type("7");
        fixture.robot().key(SWT.CR);
        fixture.robot().pause(500);
        assertFalse(fixture.editor().isDirty());
        assertThrows(CoreException.class, () -> fixture.editor().session().save(null));
        assertEquals(newer, fixture.text());
    }

    @Test
    void unreadableDimensionDoesNotBlockOpening() throws CoreException {
        open(Samples.RULES.replace("0.05 mm", "0,05 mm"));
        fixture.reveal(Samples.RULE);
        assertEquals("0,05 mm", Widgets.labelled(fixture.body(), Samples.REQUIRED, Text.class).getText());
    }
}
