/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.devices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.stream.Stream;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;
import org.eclipse.ui.PlatformUI;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.Test;

/** The tool bar of the window undoes and redoes edits of the document that is open. */
class ToolBarTest {

    private static ToolItem item(String tip) {
        Shell shell = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell();
        return Widgets.all(shell, ToolBar.class).flatMap(bar -> Stream.of(bar.getItems()))
                .filter(item -> String.valueOf(item.getToolTipText()).startsWith(tip)).findFirst()
                .orElseThrow(() -> new AssertionError("there is no tool " + tip));
    }

    private static void click(LibraryRobot library, String tip) {
        library.robot().waitFor(tip + " can be pressed", () -> item(tip).isEnabled());
        Rectangle bounds = item(tip).getBounds();
        library.robot().click(item(tip).getParent(), bounds.x + bounds.width / 2, bounds.y + bounds.height / 2);
    }

    @Test
    void undoAndRedoWorkOnTheDocument() throws CoreException {
        try (LibraryRobot library = new LibraryRobot(Libraries.SAMPLE)) {
            int before = library.lines();
            assertFalse(item("Undo").isEnabled(), "nothing was edited yet");
            library.press("Add");
            library.robot().waitFor("the new device", () -> library.lines() == before + 1);
            click(library, "Undo");
            library.robot().waitFor("no new device", () -> library.lines() == before);
            click(library, "Redo");
            library.robot().waitFor("the new device again", () -> library.lines() == before + 1);
            assertEquals(before + 1, library.library().getDevices().size());
        }
    }
}
