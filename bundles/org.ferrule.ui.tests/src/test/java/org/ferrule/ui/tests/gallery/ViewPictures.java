/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.gallery;

import java.util.List;
import java.util.stream.Stream;

import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.views.IViewDescriptor;
import org.ferrule.ui.tests.robot.EditorFixture;

/** Every view of ours, and those of the platform that the workbench offers, beside an open document. */
final class ViewPictures {
    private static final List<String> OF_THE_PLATFORM = List.of(IPageLayout.ID_PROBLEM_VIEW, IPageLayout.ID_PROP_SHEET,
            IPageLayout.ID_OUTLINE, IPageLayout.ID_PROGRESS_VIEW);

    private final Camera camera;
    private final EditorPictures editors;

    ViewPictures(Camera camera, EditorPictures editors) {
        this.camera = camera;
        this.editors = editors;
    }

    void take() {
        Stream.concat(OF_THE_PLATFORM.stream(), ours()).forEach(this::take);
        EditorFixture.page().closeAllEditors(false);
    }

    private static Stream<String> ours() {
        return Stream.of(PlatformUI.getWorkbench().getViewRegistry().getViews()).map(IViewDescriptor::getId)
                .filter(ScreenGallery::isOurs);
    }

    private void take(String id) {
        boolean there = EditorFixture.page().findView(id) != null;
        camera.take("view-" + id, () -> {
            EditorFixture.page().showView(id);
            editors.openLargest(".chart.json");
            activate(id);
        });
        if (!there) {
            EditorFixture.page().hideView(EditorFixture.page().findView(id));
        }
    }

    private static void activate(String id) throws PartInitException {
        IViewPart view = EditorFixture.page().showView(id);
        EditorFixture.page().activate(view);
    }
}
