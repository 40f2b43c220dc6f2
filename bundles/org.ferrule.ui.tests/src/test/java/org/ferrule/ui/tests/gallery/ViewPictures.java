/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.gallery;

import java.util.List;
import java.util.stream.Stream;

import org.eclipse.core.resources.IProject;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.views.IViewDescriptor;
import org.ferrule.ui.tests.robot.EditorFixture;

/** Every view of ours, and those of the platform that the workbench offers, beside an open document and by itself. */
final class ViewPictures {
    private static final List<String> OF_THE_PLATFORM = List.of(IPageLayout.ID_PROBLEM_VIEW, IPageLayout.ID_PROP_SHEET,
            IPageLayout.ID_OUTLINE, IPageLayout.ID_PROGRESS_VIEW);
    /** Views about a library; the others stand beside a chart. */
    private static final List<String> OF_LIBRARIES = List.of("org.ferrule.ui.devices.revisions",
            IPageLayout.ID_PROP_SHEET, IPageLayout.ID_OUTLINE);

    private final Camera camera;
    private final EditorPictures editors;
    private final FilledViews filled;

    ViewPictures(Camera camera, EditorPictures editors, IProject demo) {
        this.camera = camera;
        this.editors = editors;
        filled = new FilledViews(camera.robot(), demo);
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
            editors.openLargest(OF_LIBRARIES.contains(id) ? ".devices.json" : ".chart.json");
            activate(id);
        });
        IViewPart view = EditorFixture.page().findView(id);
        if (filled.fills(id)) {
            camera.take("view-" + id + "-filled", () -> filled.fill(id, view));
        }
        camera.take("view-" + id + "-large", () -> state(view, IWorkbenchPage.STATE_MAXIMIZED));
        state(view, IWorkbenchPage.STATE_RESTORED);
        if (!there) {
            EditorFixture.page().hideView(view);
        }
    }

    private static void state(IViewPart view, int state) {
        EditorFixture.page().setPartState(EditorFixture.page().getReference(view), state);
    }

    private static void activate(String id) throws PartInitException {
        IViewPart view = EditorFixture.page().showView(id);
        EditorFixture.page().activate(view);
    }
}
