/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.project;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;

import org.eclipse.jface.preference.IPreferenceNode;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.ui.PlatformUI;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The menus hold what a user of this workbench needs, and nothing of an IDE. */
class MenuTest {

    private final Robot robot = new Robot();

    private List<String> menu(String name) {
        Menu bar = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell().getMenuBar();
        MenuItem top = Stream.of(bar.getItems()).filter(item -> plain(item).equals(name)).findFirst().orElseThrow();
        top.getMenu().notifyListeners(SWT.Show, new Event());
        robot.settle();
        List<String> items = Stream.of(top.getMenu().getItems()).map(MenuTest::plain).toList();
        top.getMenu().notifyListeners(SWT.Hide, new Event());
        return items;
    }

    private static String plain(MenuItem item) {
        return item.getText().replace("&", "").replaceFirst("\t.*", "");
    }

    @ParameterizedTest
    @ValueSource(strings = { "New", "Open Demo", "Open Folder...", "Save", "Save As...", "Revert", "Export...",
        "Exit" })
    void fileMenuHas(String item) {
        assertTrue(menu("File").contains(item), menu("File").toString());
    }

    @ParameterizedTest
    @ValueSource(strings = { "Open File...", "Convert Line Delimiters To", "Open Projects from File System..." })
    void fileMenuHasNot(String item) {
        assertTrue(!menu("File").contains(item), menu("File").toString());
    }

    @Test
    void topLevelIsShort() {
        Menu bar = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell().getMenuBar();
        assertEquals(List.of("File", "Edit", "Window", "Help"),
                Stream.of(bar.getItems()).map(MenuTest::plain).filter(name -> !name.equals("Fit")).toList());
    }

    @Test
    void toolBarHasSave() {
        Shell shell = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell();
        List<String> tips = Widgets.all(shell, ToolBar.class).flatMap(bar -> Stream.of(bar.getItems()))
                .map(item -> String.valueOf(item.getToolTipText())).toList();
        assertTrue(tips.stream().anyMatch(tip -> tip.startsWith("Save")), tips.toString());
    }

    @Test
    void preferencesAreOurs() {
        List<String> pages = Stream.of(PlatformUI.getWorkbench().getPreferenceManager().getRootSubNodes())
                .map(IPreferenceNode::getId).toList();
        assertTrue(pages.contains("org.ferrule.ui.preferences.units"), pages.toString());
        assertTrue(pages.stream().noneMatch(id -> id.contains("team")), pages.toString());
    }
}
