/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.profile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.ide.IDE;
import org.eclipse.ui.navigator.CommonNavigator;
import org.ferrule.ui.WorkbenchIds;
import org.ferrule.ui.edit.DocumentEditor;
import org.ferrule.ui.profile.ProfileIds;
import org.ferrule.ui.profile.compare.CompareView;
import org.ferrule.ui.profile.growth.GrowthView;
import org.ferrule.ui.tests.fit.ChartFixture;
import org.ferrule.ui.tests.robot.Dialogs;
import org.ferrule.ui.tests.robot.DragAndDrop;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.Projects;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Trees;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Devices come to the views of profiles from wherever they are listed: by menus, or dragged. */
class ProfileMenusTest {

    private static final String LIBRARY = "balloons.devices.json";
    private static final String LINE = "Semi-compliant balloon, rapid exchange";
    private static final int FOURTH = 4;

    private Robot robot;
    private Dialogs dialogs;
    private IProject project;

    @BeforeEach
    void open() throws CommandException, CoreException {
        PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(WorkbenchIds.OPEN_DEMO, null);
        project = ResourcesPlugin.getWorkspace().getRoot().getProject("Demo");
        robot = new Robot();
        dialogs = new Dialogs(robot);
        robot.waitForJobs();
        clear(((CompareView) EditorFixture.page().showView(ProfileIds.COMPARE_VIEW)).canvas().getParent().getParent()
                .getParent());
        clear(((GrowthView) EditorFixture.page().showView(ProfileIds.GROWTH_VIEW)).canvas().getParent().getParent()
                .getParent());
    }

    /** The views remember what was chosen, even when they were closed. */
    private void clear(Composite view) {
        robot.waitForJobs();
        Table chosen = Widgets.first(view, Table.class, table -> !table.getHeaderVisible()).orElseThrow();
        chosen.setFocus();
        chosen.selectAll();
        robot.key(SWT.DEL);
        robot.waitFor("nothing chosen", () -> chosen.getItemCount() == 0);
    }

    @AfterEach
    void close() throws CoreException {
        EditorFixture.page().closeAllEditors(false);
        for (String id : List.of(ProfileIds.COMPARE_VIEW, ProfileIds.GROWTH_VIEW)) {
            EditorFixture.page().hideView(EditorFixture.page().findView(id));
        }
        robot.waitForJobs();
        Projects.delete(project);
        robot.settle();
    }

    private static CompareView compared() {
        return (CompareView) EditorFixture.page().findView(ProfileIds.COMPARE_VIEW);
    }

    private static List<String> comparedIds() {
        return compared().comparison().map(c -> c.devices().stream().map(device -> device.id()).toList())
                .orElse(List.of());
    }

    private static GrowthView growth() {
        return (GrowthView) EditorFixture.page().findView(ProfileIds.GROWTH_VIEW);
    }

    /** The line in the explorer, selected. */
    private Tree lineInExplorer() throws CoreException {
        CommonNavigator explorer = (CommonNavigator) EditorFixture.page().showView(IPageLayout.ID_PROJECT_EXPLORER);
        Tree tree = explorer.getCommonViewer().getTree();
        robot.waitFor("the project", () -> item(tree, "Demo").findFirst().isPresent());
        Trees.expand(robot, item(tree, "Demo").findFirst().orElseThrow());
        robot.waitFor("the library", () -> item(tree, LIBRARY).findFirst().isPresent());
        Trees.expand(robot, item(tree, LIBRARY).findFirst().orElseThrow());
        robot.waitFor("the line", () -> item(tree, LINE).findFirst().isPresent());
        tree.showItem(item(tree, LINE).findFirst().orElseThrow());
        Trees.click(robot, item(tree, LINE).findFirst().orElseThrow());
        robot.waitFor("the selected line",
                () -> Stream.of(tree.getSelection()).anyMatch(i -> i.getText().equals(LINE)));
        return tree;
    }

    private static Stream<TreeItem> item(Tree tree, String text) {
        return Trees.items(tree).filter(item -> item.getText().equals(text));
    }

    @Test
    void explorerComparesTheDevicesOfALine() throws CoreException {
        dialogs.menu(lineInExplorer(), 'f');
        robot.waitFor("eight devices at most", () -> comparedIds().size() == 8);
        assertTrue(comparedIds().stream().allMatch(id -> id.startsWith("dun-sc-")), comparedIds().toString());
    }

    @Test
    void explorerShowsHowTheBalloonsOfALineGrow() throws CoreException {
        dialogs.menu(lineInExplorer(), 'g');
        robot.waitFor("curves", () -> growth().growth().filter(g -> g.balloons().size() == 8).isPresent());
    }

    private NatTable fourthDevice() throws CoreException {
        DocumentEditor editor = (DocumentEditor) IDE.openEditor(EditorFixture.page(), project.getFile(LIBRARY));
        robot.settle();
        NatTable devices = Widgets.first(editor.getActivePageInstance().getPartControl().getParent(), NatTable.class,
                any -> true).orElseThrow();
        robot.waitFor("devices", () -> devices.getRowCount() > FOURTH);
        int y = devices.getStartYOfRowPosition(FOURTH) + devices.getRowHeightByPosition(FOURTH) / 2;
        robot.clickPainted(devices, devices.getStartXOfColumnPosition(1) + 8, y);
        return devices;
    }

    @Test
    void tableShowsHowABalloonGrows() throws CoreException {
        NatTable devices = fourthDevice();
        String name = devices.getDataValueByPosition(2, FOURTH).toString();
        dialogs.menu(devices, 'g');
        robot.waitFor("a curve", () -> growth().growth().filter(g -> g.balloons().size() == 1).isPresent());
        assertEquals(name, growth().growth().orElseThrow().balloons().get(0).name());
    }

    @Test
    void rowsAreDraggedByTheirHeadsOntoTheComparison() throws CoreException {
        NatTable devices = fourthDevice();
        int y = devices.getStartYOfRowPosition(FOURTH) + devices.getRowHeightByPosition(FOURTH) / 2;
        assertFalse(new DragAndDrop(robot, devices, new Point(devices.getStartXOfColumnPosition(1) + 8, y))
                .to(compared().canvas()), "a drag over cells selects");
        assertTrue(new DragAndDrop(robot, devices, new Point(5, y)).to(compared().canvas()));
        robot.clickPainted(devices, devices.getStartXOfColumnPosition(1) + 8,
                y + devices.getRowHeightByPosition(FOURTH));
        assertTrue(new DragAndDrop(robot, devices, new Point(5, y)).to(compared().canvas()));
        robot.waitFor("two devices", () -> comparedIds().size() == 2);
        assertEquals(devices.getDataValueByPosition(1, FOURTH), comparedIds().get(0));
    }

    @Test
    void aLineIsDraggedFromTheExplorerOntoTheCurves() throws CoreException {
        Tree tree = lineInExplorer();
        Rectangle line = tree.getSelection()[0].getBounds();
        assertTrue(new DragAndDrop(robot, tree, new Point(line.x + 4, line.y + 4)).to(growth().canvas()));
        robot.waitFor("curves", () -> growth().growth().filter(g -> g.balloons().size() == 8).isPresent());
    }

    @Test
    void menuOfTheTableEditsToo() throws CoreException {
        List<String> items = Stream.of(fourthDevice().getMenu().getItems()).map(MenuItem::getText)
                .map(text -> text.replace("&", "").replaceFirst("\t.*", "")).toList();
        assertTrue(items.containsAll(List.of("Edit cell", "Fill down", "Paste...", "Compare profiles",
                "Growth curves")), items.toString());
    }

    @Test
    void matrixComparesTwoRows() throws CoreException, CommandException {
        ChartFixture chart = ChartFixture.ofDemo("balloons-through-guides.chart.json");
        List<String> ids = List.of(compareRow(chart, 0), compareRow(chart, 1));
        robot.waitFor("both rows", () -> comparedIds().equals(ids));
        new ScreenPicture().take("compare-from-matrix");
    }

    private String compareRow(ChartFixture chart, int row) {
        EditorFixture.page().activate(chart.editor());
        NatTable table = chart.table().control();
        Rectangle cell = chart.table().boundsOf(row, 0).orElseThrow();
        Point head = table.toDisplay(cell.x - 20, cell.y + cell.height / 2);
        robot.moveTo(head.x, head.y);
        dialogs.menu(table, 'c');
        return chart.table().content().rows().line(row).head().id();
    }
}
