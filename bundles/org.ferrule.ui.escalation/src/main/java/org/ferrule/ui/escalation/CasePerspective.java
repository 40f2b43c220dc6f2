/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation;

import java.util.List;

import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;
import org.eclipse.ui.navigator.resources.ProjectExplorer;
import org.ferrule.ui.WorkbenchIds;

/** Cases: much room for the ladder, little for what accompanies it. */
public final class CasePerspective implements IPerspectiveFactory {

    private static final float EXPLORER_SHARE = 0.18f;
    private static final float EDITOR_SHARE = 0.8f;
    private static final List<String> WIZARDS = List.of("org.ferrule.ui.newCase", "org.ferrule.ui.newShelf",
            "org.ferrule.ui.newTechniques", "org.ferrule.ui.newProject");

    @Override
    public void createInitialLayout(IPageLayout layout) {
        layout.addView(ProjectExplorer.VIEW_ID, IPageLayout.LEFT, EXPLORER_SHARE, IPageLayout.ID_EDITOR_AREA);
        IFolderLayout below = layout.createFolder("org.ferrule.ui.escalation.below", IPageLayout.BOTTOM, EDITOR_SHARE,
                IPageLayout.ID_EDITOR_AREA);
        below.addView(EscalationIds.READY_VIEW);
        below.addView(IPageLayout.ID_PROBLEM_VIEW);
        below.addPlaceholder(WorkbenchIds.HELP);
        WIZARDS.forEach(layout::addNewWizardShortcut);
        layout.addPerspectiveShortcut(WorkbenchIds.PERSPECTIVE);
        layout.addShowViewShortcut(EscalationIds.READY_VIEW);
        layout.addShowViewShortcut(WorkbenchIds.HELP);
    }
}
