/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.devices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;

import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.SWT;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.ide.IDE;
import org.ferrule.model.Device;
import org.ferrule.ui.problem.ProblemMarkers;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.junit.jupiter.api.Test;

/** The table of all devices of a library. */
class DeviceTableTest {

    private static final int MANY = 2000;
    private static final long QUICK_MS = 3000;

    private static List<String> ids(LibraryRobot library) {
        return library.library().getDevices().stream().map(Device::getId).toList();
    }

    @Test
    void filterFindsInheritedWords() throws CoreException {
        try (LibraryRobot library = new LibraryRobot(Libraries.SAMPLE)) {
            library.robot().replace(library.filter(), "osterbrook 2.5");
            library.robot().waitFor("one device", () -> library.lines() == 1);
            assertEquals("ost-2.5", library.cell(0, "Id"));
        }
    }

    @Test
    void headSortsByFigures() throws CoreException {
        try (LibraryRobot library = new LibraryRobot(Libraries.SAMPLE)) {
            library.clickHead("Largest diameter");
            library.clickHead("Largest diameter");
            assertEquals("hol-6", library.cell(0, "Id"));
            assertEquals("ost-2.0", library.cell(2, "Id"));
        }
    }

    @Test
    void addDuplicateAndDeleteAreUndone() throws CoreException {
        try (LibraryRobot library = new LibraryRobot(Libraries.SAMPLE)) {
            List<String> before = ids(library);
            library.press("Add");
            library.robot().waitFor("the new device selected", () -> library.field("Id").getText().equals("device-4"));
            undo(library, before);
            library.clickRow(library.devices(), 1);
            library.press("Duplicate");
            assertEquals(List.of("ost-2.0", "ost-2.5", "ost-2.5-copy", "hol-6"), ids(library));
            undo(library, before);
            library.clickRow(library.devices(), 0);
            library.robot().key(SWT.DEL);
            library.robot().waitFor("two devices", () -> library.lines() == 2);
            undo(library, before);
        }
    }

    private static void undo(LibraryRobot library, List<String> before) {
        library.robot().keys(SWT.CTRL, 'z');
        library.robot().waitFor("as before", () -> ids(library).equals(before)
                && library.lines() == before.size());
    }

    @Test
    void undoNamesWhatWasDone() throws CoreException {
        try (LibraryRobot library = new LibraryRobot(Libraries.SAMPLE)) {
            library.clickRow(library.devices(), 1);
            library.press("Duplicate");
            assertEquals("Duplication of device", library.fixture().editor().session().nextUndo().getLabel());
        }
    }

    @Test
    void markerLeadsToTheFieldOfASection() throws CoreException {
        try (LibraryRobot library = new LibraryRobot(Libraries.SAMPLE.replace("2.06 mm", "2,06 mm"))) {
            library.robot().waitFor("a marker", () -> marker(library) != null);
            IEditorPart editor = IDE.openEditor(EditorFixture.page(), marker(library));
            assertEquals(library.fixture().editor(), editor);
            library.robot().waitFor("the cursor in the field", () -> library.field("Outer diameter").isFocusControl());
            assertEquals("2,06 mm", library.field("Outer diameter").getText());
            new ScreenPicture().take("device-marker");
        }
    }

    private static IMarker marker(LibraryRobot library) {
        try {
            return Stream.of(library.fixture().file().findMarkers(ProblemMarkers.TYPE, true, IResource.DEPTH_ZERO))
                    .filter(marker -> "od".equals(marker.getAttribute(ProblemMarkers.FEATURE, ""))).findFirst()
                    .orElse(null);
        } catch (CoreException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void twoThousandDevicesScrollAndFilterQuickly() throws CoreException {
        try (LibraryRobot library = new LibraryRobot(Libraries.large(MANY))) {
            assertEquals(MANY, library.lines());
            long start = System.currentTimeMillis();
            library.grid().scrollTo(library.column("Id"), MANY - 1);
            library.robot().settle();
            assertEquals("guide-1999", library.cell(MANY - 1, "Id"));
            library.filter().setText("guide-1");
            library.robot().waitFor("some of them", () -> library.lines() == 1111);
            long taken = System.currentTimeMillis() - start;
            assertTrue(taken < QUICK_MS, "took " + taken + " ms");
        }
    }
}
