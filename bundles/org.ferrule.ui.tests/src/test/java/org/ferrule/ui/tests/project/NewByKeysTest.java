/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.project;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.jface.wizard.IWizardPage;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.ferrule.ui.edit.DocumentEditor;
import org.ferrule.ui.tests.robot.Dialogs;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.Projects;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every kind of document is made with the keyboard alone, from Ctrl+N on; wrong entries are told in the wizard. */
class NewByKeysTest {

    private static final String RULES = """
            {"format": "ferrule.rules", "version": 1, "title": "House", "revision": "1", "date": "2026-01-31",
             "sources": [{"id": "practice", "title": "Common practice", "kind": "common practice"}],
             "spans": [{"figure": "inner diameter", "below": "0.01 mm", "above": "0.01 mm"}],
             "clearances": [{"required": "0.05 mm"}]}""";
    private static final String LIBRARY = """
            {"format": "ferrule.devices", "version": 1, "title": "Cabinet", "revision": "1", "date": "2026-01-31"}""";

    /** What nobody can know for a new case; the documents that the project has are named. */
    private static final List<String> OF_A_CASE = List.of("\"guide\" is missing", "\"stoppingCost\" is missing",
            "\"techniques\" is missing", "The case names no shelf, so that nothing is known of what is at hand");

    private final Robot robot = new Robot();
    private final Dialogs dialogs = new Dialogs(robot);
    private IProject project;

    @BeforeEach
    void create() throws CoreException {
        project = Projects.create("Keys");
        Projects.write(project, "house.rules.json", RULES);
        Projects.write(project, "cabinet.devices.json", LIBRARY);
        robot.waitForJobs();
    }

    @AfterEach
    void delete() throws CoreException {
        EditorFixture.page().closeAllEditors(false);
        robot.waitForJobs();
        Projects.delete(project);
        robot.settle();
    }

    /** Opens the wizard by its words, as they stand in the list of wizards. */
    private void wizard(String words, Dialogs.Work work) {
        dialogs.open(() -> robot.keys(SWT.CTRL, 'n'), "New", shell -> {
            robot.letGo(SWT.CTRL);
            Text filter = Widgets.first(shell, Text.class, Text::getEditable).orElseThrow();
            robot.waitFor("the cursor in the filter", () -> filter.isFocusControl() || isLost(shell, filter));
            robot.type(words.toLowerCase(Locale.ENGLISH));
            Tree tree = Widgets.first(shell, Tree.class, any -> true).orElseThrow();
            robot.waitFor("only that wizard", () -> tree.getItemCount() == 1
                    && tree.getItem(0).getItemCount() == 1 && tree.getItem(0).getItem(0).getText().equals(words));
            robot.waitFor("a chosen wizard", () -> {
                robot.key(SWT.ARROW_DOWN);
                robot.pause(200);
                return Widgets.button(shell, "Next >").isEnabled();
            });
            robot.keys(SWT.ALT, 'n');
            robot.waitFor("the wizard", () -> page(shell).getTitle().equals("New " + words));
            work.in(shell);
        });
    }

    /** Without a window manager nobody gives a new dialog the keyboard. */
    private static boolean isLost(Shell shell, Text first) {
        return shell.getDisplay().getFocusControl() == null && first.forceFocus() && first.isFocusControl();
    }

    private static WizardDialog dialog(Shell shell) {
        return (WizardDialog) shell.getData();
    }

    private static IWizardPage page(Shell shell) {
        return dialog(shell).getCurrentPage();
    }

    private void name(Shell shell, String name) {
        enter(shell, 'm', "File name:", name);
    }

    private void folder(Shell shell, String folder) {
        enter(shell, 'e', "Enter or select the parent folder:", folder);
    }

    private void enter(Shell shell, char mnemonic, String label, String words) {
        Text field = Widgets.labelled(shell, label, Text.class);
        robot.keys(SWT.ALT, mnemonic);
        robot.waitFor("the cursor in " + label, field::isFocusControl);
        robot.keys(SWT.CTRL, 'a');
        robot.key(SWT.DEL);
        robot.type(words);
        robot.waitFor("the words " + words, () -> field.getText().equals(words));
    }

    private void finish(Shell shell) {
        robot.waitFor("a complete page", () -> page(shell).isPageComplete());
        robot.key(SWT.CR);
        robot.waitFor("the end of the wizard", shell::isDisposed);
    }

    private static List<String> problems(IFile file) {
        try {
            return Stream.of(file.findMarkers(IMarker.PROBLEM, true, IResource.DEPTH_ZERO))
                    .map(marker -> marker.getAttribute(IMarker.MESSAGE, "")).sorted().toList();
        } catch (CoreException e) {
            throw new AssertionError(e);
        }
    }

    @ParameterizedTest
    @CsvSource({ "Device Library, .devices.json", "Rule Set, .rules.json", "Fit Chart, .chart.json",
        "Technique Library, .techniques.json", "Case, .case.json", "Shelf, .shelf.json" })
    void aDocumentIsMadeAndOpened(String words, String suffix) {
        wizard(words, shell -> {
            folder(shell, "Keys/new folder");
            name(shell, "my own");
            new ScreenPicture().take("wizard-by-keys" + suffix.replace('.', '-'));
            finish(shell);
        });
        robot.waitFor("the editor", () -> EditorFixture.page().getActiveEditor() instanceof DocumentEditor);
        DocumentEditor editor = (DocumentEditor) EditorFixture.page().getActiveEditor();
        IFile file = project.getFile("new folder/my own" + suffix);
        assertEquals(file, editor.session().file());
        robot.waitForJobs();
        assertEquals(List.of(), editor.session().problemsOfFile());
        List<String> expected = words.equals("Case") ? OF_A_CASE : List.of();
        robot.waitFor("the problems", () -> problems(file).equals(expected));
        new ScreenPicture().take("made-by-keys" + suffix.replace('.', '-'));
    }

    private static String text(IFile file) {
        try (InputStream stream = file.getContents(true)) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException | CoreException e) {
            throw new AssertionError(e);
        }
    }

    /** An empty entry is no error yet. */
    private void assertRefused(Shell shell, String words) {
        robot.waitFor("words: " + words, () -> words.isEmpty() ? !page(shell).isPageComplete()
                : String.valueOf(page(shell).getErrorMessage()).contains(words));
        assertFalse(Widgets.button(shell, "Finish").isEnabled(), words);
    }

    @Test
    void wrongEntriesAreToldInTheWizardAndNothingIsMade() throws CoreException {
        int before = project.members().length;
        wizard("Rule Set", shell -> {
            folder(shell, "Keys");
            Map.of("", "empty", "house", "is there already", "a/b", "must not lead into a folder", "x".repeat(300),
                    "The name is too long").forEach((name, words) -> {
                        name(shell, name);
                        assertRefused(shell, words);
                    });
            name(shell, "mine");
            Map.of("", "", "Nowhere", "project does not exist", "Keys/house.rules.json", "file already exists",
                    "Keys/" + "y".repeat(300), "The name of the folder is too long").forEach((folder, words) -> {
                        folder(shell, folder);
                        assertRefused(shell, words);
                    });
            new ScreenPicture().take("wizard-wrong-folder");
            robot.key(SWT.ESC);
            robot.waitFor("no wizard", shell::isDisposed);
        });
        assertEquals(before, project.members().length);
        assertEquals(RULES, text(project.getFile("house.rules.json")));
    }
}
