/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.ui.tests.escalation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.WorkbenchException;
import org.eclipse.ui.navigator.resources.ProjectExplorer;
import org.ferrule.ui.WorkbenchIds;
import org.ferrule.ui.escalation.EscalationIds;
import org.ferrule.ui.escalation.ready.ReadyView;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The perspective for cases gives the ladder room and has beside it what accompanies it. */
class CasePerspectiveTest {

    private CaseFixture fixture;

    @BeforeEach
    void open() throws CommandException, CoreException {
        fixture = new CaseFixture();
        show(EscalationIds.PERSPECTIVE);
        fixture.open();
    }

    @AfterEach
    void close() throws CoreException {
        show(WorkbenchIds.PERSPECTIVE);
        fixture.close();
    }

    private static void show(String perspective) throws WorkbenchException {
        IWorkbenchWindow window = EditorFixture.page().getWorkbenchWindow();
        PlatformUI.getWorkbench().showPerspective(perspective, window);
    }

    @Test
    void theLadderHasMostOfTheRoomAndTheReadinessStandsBelow() {
        ReadyView ready = (ReadyView) EditorFixture.page().findView(EscalationIds.READY_VIEW);
        fixture.robot().waitFor("the case in the table", () -> ready.table().getItemCount() == 1);
        new ScreenPicture().take("case-perspective");
        for (String view : List.of(ProjectExplorer.VIEW_ID, EscalationIds.READY_VIEW)) {
            assertTrue(EditorFixture.page().findView(view) != null, view);
        }
        int shell = EditorFixture.page().getWorkbenchWindow().getShell().getSize().y;
        int ladder = fixture.editor().ladder().getPartControl().getSize().y;
        assertTrue(ladder > shell / 2, ladder + " of " + shell);
    }

    @Test
    void itIsReachedByItsNameAndOffersTheWizardsOfItsDocuments() {
        assertEquals("Cases", EditorFixture.page().getPerspective().getLabel());
        assertTrue(List.of(EditorFixture.page().getNewWizardShortcuts()).containsAll(
                List.of("org.ferrule.ui.newCase", "org.ferrule.ui.newShelf", "org.ferrule.ui.newTechniques")));
    }
}
