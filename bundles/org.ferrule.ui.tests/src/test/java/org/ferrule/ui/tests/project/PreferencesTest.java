/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.project;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.stream.Stream;

import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.jface.preference.IPreferenceNode;
import org.eclipse.jface.preference.PreferenceDialog;
import org.eclipse.jface.preference.PreferenceManager;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.dialogs.PreferencesUtil;
import org.ferrule.ui.look.Colours;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.Test;

/** The theme is chosen in the preferences and holds at once. */
class PreferencesTest {
    private final Robot robot = new Robot();

    private void choose(String theme) {
        Shell window = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell();
        PreferenceDialog dialog = PreferencesUtil.createPreferenceDialogOn(window, "org.ferrule.ui.preferences.general",
                null, null);
        dialog.setBlockOnOpen(false);
        dialog.open();
        Shell shell = dialog.getShell();
        robot.pause(300);
        Button button = Widgets.button(shell, theme);
        robot.waitFor("the choice", () -> {
            // a press before the dialog is painted has no effect
            if (!button.getSelection()) {
                robot.click(button);
                robot.pause(200);
            }
            return button.getSelection();
        });
        new ScreenPicture().take("preferences-" + theme.replace(' ', '-'));
        robot.waitFor("no dialog", () -> {
            if (!shell.isDisposed()) {
                robot.click(Widgets.button(shell, "Apply and Close"));
            }
            return shell.isDisposed();
        });
    }

    private static String kept() {
        return InstanceScope.INSTANCE.getNode("org.eclipse.e4.ui.css.swt.theme").get("themeid", "");
    }

    @Test
    void darkAndLightHoldAtOnceAndTheSystemIsForgottenTo() {
        choose("Dark");
        robot.waitFor("a dark window", Colours::dark);
        assertEquals("org.eclipse.e4.ui.css.theme.e4_dark", kept());
        choose("Light");
        robot.waitFor("a light window", () -> !Colours.dark());
        choose("As the system");
        robot.waitFor("nothing kept", () -> kept().isEmpty());
        assertFalse(Colours.dark(), "the test display has no dark desktop");
    }

    /** A page that leads to another tells the id of that, instead of its name, where it is not there. */
    @Test
    void noPageLeadsToAnotherThatIsNotThere() {
        Shell window = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell();
        List<String> pages = PlatformUI.getWorkbench().getPreferenceManager().getElements(PreferenceManager.PRE_ORDER)
                .stream().map(IPreferenceNode::getId).toList();
        for (String page : pages) {
            PreferenceDialog dialog = PreferencesUtil.createPreferenceDialogOn(window, page, null, null);
            dialog.setBlockOnOpen(false);
            dialog.open();
            robot.pause(100);
            List<String> lost = Stream.concat(
                    Widgets.all(dialog.getShell(), Link.class).map(Link::getText),
                    Widgets.all(dialog.getShell(), Label.class).map(Label::getText))
                    .filter(words -> words.contains("not found")).toList();
            dialog.close();
            assertEquals(List.of(), lost, page);
        }
    }
}
