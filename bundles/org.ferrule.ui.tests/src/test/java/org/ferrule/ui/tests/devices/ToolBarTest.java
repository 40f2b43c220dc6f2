/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.devices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.Optional;
import java.util.function.BooleanSupplier;
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

    private static final long BETWEEN_CLICKS_MS = 400;

    private static Optional<ToolItem> tool(String tip) {
        Shell shell = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell();
        return Widgets.all(shell, ToolBar.class).flatMap(bar -> Stream.of(bar.getItems()))
                .filter(item -> String.valueOf(item.getToolTipText()).replace("&", "").startsWith(tip)).findFirst();
    }

    private static boolean isEnabled(String tip) {
        return tool(tip).filter(ToolItem::isEnabled).isPresent();
    }

    /** Clicks until it has an effect: a posted click is none where the pointer did not enter the tool before. */
    private static void click(LibraryRobot library, String tip, BooleanSupplier effect) {
        library.robot().waitFor(tip + " can be pressed", () -> isEnabled(tip));
        library.robot().waitFor("the effect of " + tip, () -> {
            if (!effect.getAsBoolean() && isEnabled(tip)) {
                ToolItem item = tool(tip).orElseThrow();
                Rectangle at = item.getBounds();
                library.robot().click(item.getParent(), at.x + at.width / 2, at.y + at.height / 2);
                library.robot().pause(BETWEEN_CLICKS_MS);
            }
            return effect.getAsBoolean();
        });
    }

    @Test
    void undoAndRedoWorkOnTheDocument() throws CoreException {
        try (LibraryRobot library = new LibraryRobot(Libraries.SAMPLE)) {
            int before = library.lines();
            library.robot().waitFor("the tools", () -> tool("Undo").isPresent() && tool("Redo").isPresent());
            assertFalse(isEnabled("Undo"), "nothing was edited yet");
            library.press("Add");
            library.robot().waitFor("the new device", () -> library.lines() == before + 1);
            click(library, "Undo", () -> library.lines() == before);
            click(library, "Redo", () -> library.lines() == before + 1);
            assertEquals(before + 1, library.library().getDevices().size());
        }
    }
}
