/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.core.resources.IMarker;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.ide.IDE;
import org.ferrule.ui.problem.ProblemMarkers;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Trees;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Ctrl+1 offers what a doubtful dimension could mean, in the field and in the Problems view. */
class QuickFixTest {
    private static final int PAUSE_MS = 300;

    private EditorFixture fixture;
    private Robot robot;

    @BeforeEach
    void open() throws CoreException {
        fixture = new EditorFixture(Samples.RULES_FILE, Samples.RULES.replace("0.05 mm", "0,05 mm"));
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

    private static Optional<org.eclipse.swt.widgets.List> popup() {
        return Stream.of(Display.getCurrent().getShells()).filter(Shell::isVisible)
                .flatMap(shell -> Widgets.all(shell, org.eclipse.swt.widgets.List.class))
                .filter(list -> list.getItemCount() > 0 && list.getItem(0).contains(":")).findFirst();
    }

    private void askAtField() {
        robot.keys(SWT.CTRL, '1');
        robot.waitFor("the fixes", () -> popup().isPresent());
    }

    @Test
    void decimalCommaIsFixedInTheFieldAndTheFixUndone() {
        robot.click(field());
        askAtField();
        new ScreenPicture().take("quick-fix-field");
        assertEquals(List.of("Write a decimal point: 0.05 mm"), List.of(popup().orElseThrow().getItems()));
        robot.key(SWT.CR);
        robot.waitFor("the fix", () -> field().getText().equals("0.05 mm"));
        assertEquals("0.05 mm", fixed());
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("the former text", () -> field().getText().equals("0,05 mm"));
        assertFalse(fixture.editor().isDirty());
    }

    private String fixed() {
        return fixture.editor().session().document().map(document -> new String(fixture.editor().session().toBytes()))
                .map(text -> text.replaceAll("(?s).*\"required\": \"([^\"]*)\".*", "$1")).orElseThrow();
    }

    @Test
    void plainFigureIsGivenAMeaningByArrowAndEnter() {
        robot.replace(field(), "0.06 mm");
        askAtField();
        robot.key(SWT.ARROW_DOWN);
        robot.key(SWT.ARROW_DOWN);
        robot.key(SWT.CR);
        robot.waitFor("the fix", () -> fixed().equals("0.06 mm max"));
        assertEquals("0.06 mm max", field().getText());
    }

    @Test
    void escapeChangesNothing() {
        robot.click(field());
        askAtField();
        robot.key(SWT.ESC);
        robot.waitFor("no list", () -> popup().isEmpty());
        assertEquals("0,05 mm", field().getText());
        assertFalse(fixture.editor().isDirty());
    }

    @Test
    void problemsViewFixesAtTheMarkerWithoutSaving() throws CoreException {
        robot.waitFor("a marker with a fix", this::hasFix);
        EditorFixture.page().showView(IPageLayout.ID_PROBLEM_VIEW);
        robot.waitFor("the problem in the view", () -> {
            errors().filter(group -> !group.getExpanded()).ifPresent(group -> Trees.expand(robot, group));
            return line().isPresent();
        });
        Trees.click(robot, line().orElseThrow());
        Display.getCurrent().timerExec(PAUSE_MS, this::finishWhenAsked);
        robot.keys(SWT.CTRL, '1');
        robot.waitFor("the fix", () -> fixed().equals("0.05 mm"));
        robot.waitFor("no marker", () -> !hasFix());
    }

    /** The dialog blocks the key that opens it, so the rest goes on inside. */
    private void finishWhenAsked() {
        robot.waitFor("the dialog", () -> finish().filter(Button::isEnabled).isPresent());
        robot.pause(PAUSE_MS);
        new ScreenPicture().take("quick-fix-marker");
        robot.waitFor("no dialog", () -> {
            finish().ifPresent(robot::click);
            robot.pause(PAUSE_MS);
            return finish().isEmpty();
        });
    }

    private boolean hasFix() {
        try {
            return Stream.of(fixture.file().findMarkers(ProblemMarkers.TYPE, true, 0)).filter(IMarker::exists)
                    .anyMatch(IDE.getMarkerHelpRegistry()::hasResolutions);
        } catch (CoreException e) {
            throw new AssertionError(e);
        }
    }

    private static Optional<Button> finish() {
        return Stream.of(Display.getCurrent().getShells()).filter(Shell::isVisible)
                .flatMap(shell -> Widgets.all(shell, Button.class))
                .filter(button -> button.getText().replace("&", "").equals("Finish")).findFirst();
    }

    private static Stream<TreeItem> lines() {
        Shell shell = EditorFixture.page().getWorkbenchWindow().getShell();
        return Widgets.all(shell, Tree.class).flatMap(Trees::items);
    }

    private static Optional<TreeItem> errors() {
        return lines().filter(item -> item.getText(0).startsWith("Errors")).findFirst();
    }

    private static Optional<TreeItem> line() {
        return lines().filter(item -> item.getText(0).contains("0,05 mm")).findFirst();
    }
}
