/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.gallery;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.core.commands.Command;
import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.views.IViewDescriptor;
import org.ferrule.ui.edit.DeviceCommand;
import org.ferrule.ui.tests.robot.EditorFixture;

/** Every view of ours, and those of the platform that the workbench offers, beside an open document. */
final class ViewPictures {
    private static final List<String> OF_THE_PLATFORM = List.of(IPageLayout.ID_PROBLEM_VIEW, IPageLayout.ID_PROP_SHEET,
            IPageLayout.ID_OUTLINE, IPageLayout.ID_PROGRESS_VIEW);

    /** Views that show nothing before they are given devices, and the commands that do. */
    private static final Map<String, String> FILLED_BY = Map.of("org.ferrule.ui.profile.compareView",
            "org.ferrule.ui.profile.compare", "org.ferrule.ui.profile.growthView", "org.ferrule.ui.profile.growth");
    private static final String DEVICES = Stream.of("dun-sc-300-15", "dun-nc-300-15", "kol-twin-300-15")
            .map(id -> "/Demo/balloons.devices.json!" + id).collect(Collectors.joining("\n"));

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
            editors.openLargest(id.contains(".devices.") ? ".devices.json" : ".chart.json");
            activate(id);
            fill(id);
        });
        if (!there) {
            EditorFixture.page().hideView(EditorFixture.page().findView(id));
        }
    }

    private static void fill(String id) {
        if (FILLED_BY.containsKey(id)) {
            IWorkbench workbench = PlatformUI.getWorkbench();
            Command command = workbench.getService(ICommandService.class).getCommand(FILLED_BY.get(id));
            try {
                workbench.getService(IHandlerService.class).executeCommand(
                        ParameterizedCommand.generateCommand(command, Map.of(DeviceCommand.DEVICES, DEVICES)), null);
            } catch (CommandException e) {
                throw new IllegalStateException(id, e);
            }
        }
    }

    private static void activate(String id) throws PartInitException {
        IViewPart view = EditorFixture.page().showView(id);
        EditorFixture.page().activate(view);
    }
}
