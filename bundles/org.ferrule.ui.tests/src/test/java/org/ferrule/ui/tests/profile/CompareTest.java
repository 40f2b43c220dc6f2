/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.profile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.ide.IDE;
import org.ferrule.model.ElementPath;
import org.ferrule.model.ModelPackage;
import org.ferrule.quantity.Dimension;
import org.ferrule.ui.WorkbenchIds;
import org.ferrule.ui.edit.DocumentEditor;
import org.ferrule.ui.profile.ProfileIds;
import org.ferrule.ui.profile.compare.CompareView;
import org.ferrule.ui.tests.robot.Dialogs;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.Projects;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Devices over each other along their length. */
class CompareTest {
    private static final int FOURTH = 4;

    private static final String LIBRARY = "balloons.devices.json";
    private static final String SHAFT = "devices[dun-sc-100-10]/sections[1]";

    private Robot robot;
    private Dialogs dialogs;
    private IProject project;
    private CompareView view;

    @BeforeEach
    void open() throws CommandException, CoreException {
        PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(WorkbenchIds.OPEN_DEMO, null);
        project = ResourcesPlugin.getWorkspace().getRoot().getProject("Demo");
        show();
        startAnew();
        choose("semi-compliant balloon 1.00");
        choose("non-compliant balloon 2.00");
        robot.waitFor("a comparison", () -> view.comparison().filter(c -> c.devices().size() == 2).isPresent());
        robot.waitFor("a plot", () -> view.canvas().picture().isPresent());
    }

    /** The view comes back as it was in the test before. */
    private void startAnew() {
        for (String list : List.of("Devices", "Through")) {
            Table table = Widgets.labelled(body(), list, Table.class);
            FormToolkit.ensureVisible(table);
            while (table.getItemCount() > 0) {
                int before = table.getItemCount();
                robot.click(table, 40, table.getItem(0).getBounds().y + 6);
                robot.key(SWT.DEL);
                robot.waitFor("one less", () -> table.getItemCount() < before);
            }
        }
        Combo from = Widgets.labelled(body(), "From", Combo.class);
        from.setFocus();
        while (from.getSelectionIndex() > 0) {
            robot.key(SWT.ARROW_UP);
        }
        robot.waitFor("nothing compared", () -> view.comparison().isEmpty());
    }

    private void show() throws CoreException {
        view = (CompareView) EditorFixture.page().showView(ProfileIds.COMPARE_VIEW);
        robot = new Robot();
        dialogs = new Dialogs(robot);
        robot.waitForJobs();
        EditorFixture.page().setPartState(EditorFixture.page().getReference(view), IWorkbenchPage.STATE_MAXIMIZED);
        robot.settle();
    }

    @AfterEach
    void close() throws CoreException {
        EditorFixture.page().closeAllEditors(false);
        EditorFixture.page().hideView(view);
        robot.waitForJobs();
        Projects.delete(project);
        robot.settle();
    }

    private Composite body() {
        return view.canvas().getParent().getParent().getParent();
    }

    private void choose(String words) {
        add(0, "Devices", words);
    }

    private void add(int which, String title, String words) {
        Button button = Widgets.all(body(), Button.class).filter(b -> b.getText().equals("Add...")).toList().get(which);
        FormToolkit.ensureVisible(button);
        dialogs.open(() -> robot.click(button), title, shell -> {
            Text filter = Widgets.first(shell, Text.class, any -> true).orElseThrow();
            robot.replace(filter, words);
            robot.pause(300);
            dialogs.close(shell, Widgets.button(shell, "OK"));
        });
    }

    private List<String> names() {
        return view.comparison().orElseThrow().devices().stream().map(device -> device.name()).toList();
    }

    private void focusPlot() {
        robot.clickPainted(view.canvas(), view.canvas().getSize().x / 2, view.canvas().getSize().y / 3);
        robot.waitFor("the keyboard", view.canvas()::isFocusControl);
    }

    @Test
    void showsWhatWasChosen() {
        assertEquals(List.of("Semi-compliant balloon 1.00 x 10 mm", "Non-compliant balloon 2.00 x 12 mm"), names());
        new ScreenPicture().take("compare");
        assertTrue(view.tables().texts(0).size() > 4, "a table of differences");
    }

    @Test
    void aLumenIsPassedOrNot() {
        add(1, "Through", "guide extension 6 fr, 25");
        robot.waitFor("a lumen", () -> view.comparison().filter(c -> c.lines().size() == 1).isPresent());
        CTabFolder folder = Widgets.first(body(), CTabFolder.class, any -> true).orElseThrow();
        folder.forceFocus();
        robot.key(SWT.ARROW_RIGHT);
        robot.key(SWT.ARROW_RIGHT);
        robot.waitFor("the lumens", () -> folder.getSelectionIndex() == 2);
        new ScreenPicture().take("compare-lumen");
        assertTrue(view.tables().texts(2).get(0).get(0).startsWith("A in L1"), view.tables().texts(2).toString());
    }

    @Test
    void landmarkMovesTheStations() {
        double before = view.comparison().orElseThrow().from().mm();
        Combo from = Widgets.labelled(body(), "From", Combo.class);
        from.setFocus();
        robot.key(SWT.ARROW_DOWN);
        robot.waitFor("other stations", () -> view.comparison().filter(c -> c.from().mm() < before).isPresent());
        new ScreenPicture().take("compare-landmark");
    }

    @Test
    void keysZoomAndFitAll() {
        focusPlot();
        robot.type("0");
        double whole = view.lengthInSightMm();
        robot.key(SWT.KEYPAD_ADD);
        robot.key(SWT.KEYPAD_ADD);
        assertEquals(whole / (1.25 * 1.25), view.lengthInSightMm(), 1);
        new ScreenPicture().take("compare-zoomed");
        robot.type("0");
        assertEquals(whole, view.lengthInSightMm(), 0.001);
    }

    @Test
    void keysMoveTheCursorThatReads() {
        focusPlot();
        robot.waitFor("a reading", () -> !view.canvas().reading().isEmpty());
        String first = view.canvas().reading().get(0);
        robot.key(SWT.ARROW_RIGHT);
        String second = view.canvas().reading().get(0);
        assertNotEquals(first, second);
        dialogs.chord(SWT.SHIFT, SWT.ARROW_RIGHT);
        assertNotEquals(second, view.canvas().reading().get(0));
        CTabFolder folder = Widgets.first(body(), CTabFolder.class, any -> true).orElseThrow();
        robot.click(folder, folder.getItem(1).getBounds().x + 20, folder.getItem(1).getBounds().y + 8);
        robot.settle();
        new ScreenPicture().take("compare-cursor");
        List<List<String>> read = view.tables().texts(1);
        assertEquals(2, read.size());
        assertTrue(read.get(0).get(2).contains("mm"), read.toString());
        focusPlotByTab();
        robot.key(SWT.ESC);
        assertTrue(view.canvas().reading().isEmpty(), "Escape takes the cursor away");
    }

    private void focusPlotByTab() {
        view.canvas().setFocus();
        robot.settle();
    }

    @Test
    void followsAnEditAndItsUndo() throws CoreException {
        String before = cell("Largest diameter");
        EditorFixture.page().setPartState(EditorFixture.page().getReference(view), IWorkbenchPage.STATE_RESTORED);
        IFile library = project.getFile(LIBRARY);
        DocumentEditor editor = (DocumentEditor) IDE.openEditor(EditorFixture.page(), library);
        EObject section = editor.session().document().flatMap(d -> ElementPath.resolve(d, SHAFT)).orElseThrow();
        editor.session().set(section, ModelPackage.Literals.SHAFT_SECTION__OD, Dimension.parse("1.5 mm"));
        robot.waitFor("another table", () -> !cell("Largest diameter").equals(before));
        assertTrue(cell("Largest diameter").startsWith("1.5"), cell("Largest diameter"));
        editor.setFocus();
        robot.settle();
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("as before", () -> cell("Largest diameter").equals(before));
    }

    private String cell(String quantity) {
        return view.tables().texts(0).stream().filter(row -> row.get(0).equals(quantity)).map(row -> row.get(1))
                .findFirst().orElse("");
    }

    @Test
    void exportsWhatIsSeenWithItsSources(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("profiles.svg");
        focusPlot();
        dialogs.open(() -> dialogs.menu(view.canvas(), 's'), "Save picture", shell -> {
            Text name = Widgets.labelled(shell, "File", Text.class);
            robot.replace(name, file.toString());
            new ScreenPicture().take("compare-save");
            dialogs.close(shell, Widgets.button(shell, "Save"));
        });
        String svg = Files.readString(file);
        assertTrue(svg.contains("Libraries: " + LIBRARY), svg);
        assertTrue(svg.contains("Rule set: "), svg);
        assertTrue(svg.contains("curve:dun-sc-100-10:outer"), "the curve of the first device");
    }

    @Test
    void tableIsCopiedWithTabs() {
        Table table = Widgets.all(body(), Table.class).filter(t -> t.getHeaderVisible()).findFirst().orElseThrow();
        robot.click(table, 30, table.getHeaderHeight() + 8);
        robot.keys(SWT.CTRL, 'c');
        Clipboard clipboard = new Clipboard(body().getDisplay());
        String text = (String) clipboard.getContents(TextTransfer.getInstance());
        clipboard.dispose();
        List<String> lines = text.lines().toList();
        assertEquals(view.tables().texts(0).size() + 1, lines.size());
        assertTrue(lines.get(0).contains("\tA Semi-compliant balloon 1.00 x 10 mm\tB Non-compliant"), lines.get(0));
        assertTrue(lines.stream().allMatch(line -> line.split("\t", -1).length == 4), text);
    }

    @Test
    void comesBackAsItWas() throws CoreException {
        List<String> before = names();
        EditorFixture.page().setPartState(EditorFixture.page().getReference(view), IWorkbenchPage.STATE_RESTORED);
        EditorFixture.page().hideView(view);
        robot.settle();
        show();
        robot.waitFor("a comparison", () -> view.comparison().isPresent());
        assertEquals(before, names());
    }

    @Test
    void removedDeviceIsComparedNoMore() {
        Table devices = Widgets.labelled(body(), "Devices", Table.class);
        robot.click(devices, 40, devices.getItem(1).getBounds().y + 6);
        robot.key(SWT.DEL);
        robot.waitFor("too few", () -> view.comparison().isEmpty());
        assertFalse(Stream.of(devices.getItems()).anyMatch(item -> item.getText().contains("Non-compliant")));
    }

    @Test
    void menuOfALibraryAddsADevice() throws CoreException {
        EditorFixture.page().setPartState(EditorFixture.page().getReference(view), IWorkbenchPage.STATE_RESTORED);
        DocumentEditor editor = (DocumentEditor) IDE.openEditor(EditorFixture.page(), project.getFile(LIBRARY));
        robot.settle();
        NatTable devices = Widgets.first(editor.getActivePageInstance().getPartControl().getParent(), NatTable.class,
                any -> true).orElseThrow();
        robot.waitFor("devices", () -> devices.getRowCount() > FOURTH);
        int y = devices.getStartYOfRowPosition(FOURTH) + devices.getRowHeightByPosition(FOURTH) / 2;
        robot.clickPainted(devices, devices.getStartXOfColumnPosition(1) + 8, y);
        String id = devices.getDataValueByPosition(1, FOURTH).toString();
        dialogs.menu(devices, 'c');
        robot.waitFor("three devices", () -> view.comparison().filter(c -> c.devices().size() == 3).isPresent());
        assertEquals(id, view.comparison().orElseThrow().devices().get(2).id());
    }
}
