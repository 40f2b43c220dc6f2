/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.escalation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.ui.ide.IDE;
import org.ferrule.model.PlannedTry;
import org.ferrule.model.TechniqueLibrary;
import org.ferrule.ui.edit.DocumentEditor;
import org.ferrule.ui.problem.ProblemMarkers;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.Projects;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A problem of something deep within a document leads to its place there, with the field shown. */
class NestedProblemTest {

    private static final String PRIOR = "\"prior\": {\"successes\": 1, \"failures\": 2, "
            + "\"label\": \"Assumed for a test, not measured\"}";

    private CaseFixture fixture;

    @BeforeEach
    void open() throws CommandException, CoreException {
        fixture = new CaseFixture();
    }

    @AfterEach
    void close() throws CoreException {
        fixture.close();
    }

    private void write(String file, String content) throws CoreException {
        Projects.write(fixture.file(file).getProject(), file, content);
    }

    private IMarker marker(String file, String path, String feature) {
        fixture.robot().waitFor("a problem of " + path, () -> find(fixture.file(file), path, feature).isPresent());
        return find(fixture.file(file), path, feature).orElseThrow();
    }

    private static Optional<IMarker> find(IFile file, String path, String feature) {
        try {
            return Stream.of(file.findMarkers(ProblemMarkers.TYPE, true, IResource.DEPTH_ZERO))
                    .filter(marker -> marker.getAttribute(ProblemMarkers.PATH, "").equals(path)
                            && marker.getAttribute(ProblemMarkers.FEATURE, "").equals(feature))
                    .findFirst();
        } catch (CoreException e) {
            throw new AssertionError(e);
        }
    }

    private DocumentEditor follow(IMarker marker) throws CoreException {
        new Robot(); // takes the keyboard for the workbench
        DocumentEditor editor = (DocumentEditor) IDE.openEditor(EditorFixture.page(), marker);
        fixture.robot().settle();
        return editor;
    }

    private static Composite body(DocumentEditor editor) {
        return editor.getActivePageInstance().getPartControl().getParent();
    }

    private static String selected(DocumentEditor editor) {
        return Widgets.first(body(editor), Tree.class, any -> true).orElseThrow().getSelection()[0].getText();
    }

    @Test
    void aTryWithoutItsAssumedChanceIsShownAndCanBeGivenOne() throws CoreException {
        int end = CaseSamples.TECHNIQUES.indexOf(PRIOR);
        int begin = CaseSamples.TECHNIQUES.lastIndexOf(',', end);
        write(CaseSamples.TECHNIQUES_FILE, CaseSamples.TECHNIQUES.substring(0, begin)
                + CaseSamples.TECHNIQUES.substring(end + PRIOR.length()));
        IMarker marker = marker(CaseSamples.TECHNIQUES_FILE, "techniques[small-balloon]/tries[0]", "prior");
        assertTrue(marker.getAttribute(IMarker.LOCATION, "").startsWith("try 1 of Small balloon, line "),
                () -> marker.getAttribute(IMarker.LOCATION, ""));
        DocumentEditor editor = follow(marker);
        assertEquals("Try 1", selected(editor));
        Button state = Widgets.button(body(editor), "Fill in");
        fixture.robot().waitFor("the focus", state::isFocusControl);
        new ScreenPicture().take("problem-of-a-try");
        PlannedTry first = ((TechniqueLibrary) editor.session().document().orElseThrow()).getTechniques().get(0)
                .getTries().get(0);
        fixture.robot().clickUntil("an assumed chance", state, () -> first.getPrior() != null);
        editor.session().undo();
        assertNull(first.getPrior());
    }

    @Test
    void aFigureOfATryIsShownInItsField() throws CoreException {
        write(CaseSamples.TECHNIQUES_FILE,
                CaseSamples.TECHNIQUES.replaceFirst("(\"tries\": \\[\\s+\\{\\s+\"minutes\": )5",
                        "$1-5"));
        DocumentEditor editor = follow(
                marker(CaseSamples.TECHNIQUES_FILE, "techniques[small-balloon]/tries[0]", "minutes"));
        assertEquals("Try 1", selected(editor));
        Text minutes = Widgets.labelled(body(editor), "Minutes", Text.class);
        fixture.robot().waitFor("the focus", minutes::isFocusControl);
        assertEquals("-5", minutes.getText());
    }

    @Test
    void aLotOfAShelfIsShownInItsRow() throws CoreException {
        write(CaseSamples.SHELF_FILE, CaseSamples.SHELF.replace("2027-02-28", "soon"));
        DocumentEditor editor = follow(marker(CaseSamples.SHELF_FILE, "items[sc-150-15]/lots[0]", "expiry"));
        Table table = Widgets.first(body(editor), Table.class, any -> true).orElseThrow();
        assertEquals("A213", table.getSelection()[0].getText(2));
        fixture.robot().waitFor("the focus", table::isFocusControl);
        new ScreenPicture().take("problem-of-a-lot");
    }

    @Test
    void aNumberOfAnItemThatTheTableShowsIsShownInItsRow() throws CoreException {
        write(CaseSamples.SHELF_FILE, CaseSamples.SHELF.replaceFirst("\"parLevel\": 2", "\"parLevel\": -2"));
        DocumentEditor editor = follow(marker(CaseSamples.SHELF_FILE, "items[sc-150-15]", "parLevel"));
        Table table = Widgets.first(body(editor), Table.class, any -> true).orElseThrow();
        assertEquals("Small balloon 1.50 x 15", table.getSelection()[0].getText(0));
    }

    @Test
    void anEntryOfALogIsShownOnThePageOfTheCase() throws CoreException {
        write(CaseSamples.CASE_FILE, CaseSamples.CASE.replace("\"spent\":",
                "\"log\": [{\"move\": \"small-balloon\", \"outcome\": \"failed\", \"minutes\": 4}, "
                        + "{\"move\": \"no-such-step\", \"outcome\": \"failed\"}],\n  \"spent\":"));
        DocumentEditor editor = follow(marker(CaseSamples.CASE_FILE, "log[1]", "move"));
        Combo step = Widgets.first(body(editor), Combo.class, Combo::isFocusControl).orElse(null);
        assertNotNull(step, () -> "the focus is at " + editor.getSite().getShell().getDisplay().getFocusControl());
        Table log = Widgets.first(body(editor), Table.class,
                table -> table.getColumnCount() > 0 && table.getColumn(0).getText().equals("Step")).orElseThrow();
        assertEquals(1, log.getSelectionIndex());
    }
}
