/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.Platform;
import org.eclipse.swt.graphics.Image;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.ide.IDE;
import org.eclipse.ui.navigator.CommonNavigator;
import org.eclipse.ui.navigator.resources.ProjectExplorer;
import org.ferrule.ui.WorkbenchIds;
import org.ferrule.ui.fit.FitIds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The window that opens first. */
class WorkbenchStartTest {

    @Test
    void runsTheProductOfThisProject() {
        assertEquals("org.ferrule.product.workbench", Platform.getProduct().getId());
    }

    @Test
    void opensTheFitPerspective() {
        assertEquals(WorkbenchIds.PERSPECTIVE, page().getPerspective().getId());
    }

    @ParameterizedTest
    @ValueSource(strings = { ProjectExplorer.VIEW_ID, IPageLayout.ID_PROBLEM_VIEW, IPageLayout.ID_PROP_SHEET })
    void holdsTheView(String viewId) {
        assertNotNull(page().findViewReference(viewId), viewId);
    }

    @ParameterizedTest
    @ValueSource(strings = { FitIds.GROUNDS_VIEW, FitIds.PASSAGE_VIEW, FitIds.STACK_VIEW, FitIds.SUMS_VIEW })
    void offersTheView(String viewId) {
        assertTrue(List.of(page().getShowViewShortcuts()).contains(viewId), viewId);
    }

    @Test
    void explorerShowsTheWorkspace() {
        CommonNavigator explorer = (CommonNavigator) page().findView(ProjectExplorer.VIEW_ID);
        assertEquals(ResourcesPlugin.getWorkspace().getRoot(), explorer.getCommonViewer().getInput());
    }

    @ParameterizedTest
    @ValueSource(strings = { IDE.SharedImages.IMG_OBJ_PROJECT, IDE.SharedImages.IMG_OBJ_PROJECT_CLOSED })
    void paintsProjectImages(String name) {
        Image image = PlatformUI.getWorkbench().getSharedImages().getImage(name);
        assertNotNull(image, name);
        assertEquals(16, image.getBounds().width);
    }

    private static IWorkbenchPage page() {
        IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
        return window.getActivePage();
    }
}
