/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal;

import java.util.List;

import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;
import org.eclipse.ui.navigator.resources.ProjectExplorer;
import org.ferrule.ui.WorkbenchIds;

/** The explorer and the outline on the left, editors in the middle, problems and properties below. */
public class FitPerspective implements IPerspectiveFactory {

    private static final float EXPLORER_SHARE = 0.22f;
    private static final List<String> WIZARDS = List.of("org.ferrule.ui.newProject", "org.ferrule.ui.newDevices",
            "org.ferrule.ui.newRules", "org.ferrule.ui.newChart", "org.ferrule.ui.newTechniques",
            "org.ferrule.ui.newCase", "org.ferrule.ui.newShelf", "org.eclipse.ui.wizards.new.folder",
            "org.eclipse.ui.wizards.new.file");
    private static final float OUTLINE_FROM = 0.58f;
    private static final float EDITOR_SHARE = 0.66f;

    @Override
    public void createInitialLayout(IPageLayout layout) {
        layout.addView(ProjectExplorer.VIEW_ID, IPageLayout.LEFT, EXPLORER_SHARE, IPageLayout.ID_EDITOR_AREA);
        layout.addView(IPageLayout.ID_OUTLINE, IPageLayout.BOTTOM, OUTLINE_FROM, ProjectExplorer.VIEW_ID);
        IFolderLayout below = layout.createFolder("org.ferrule.ui.below", IPageLayout.BOTTOM, EDITOR_SHARE,
                IPageLayout.ID_EDITOR_AREA);
        below.addView(IPageLayout.ID_PROBLEM_VIEW);
        below.addView(IPageLayout.ID_PROP_SHEET);
        addShortcuts(layout);
    }

    private static void addShortcuts(IPageLayout layout) {
        layout.addShowViewShortcut(ProjectExplorer.VIEW_ID);
        layout.addShowViewShortcut(IPageLayout.ID_OUTLINE);
        layout.addShowViewShortcut(IPageLayout.ID_PROBLEM_VIEW);
        layout.addShowViewShortcut(IPageLayout.ID_PROP_SHEET);
        layout.addShowViewShortcut(WorkbenchIds.HELP);
        WIZARDS.forEach(layout::addNewWizardShortcut);
    }
}
