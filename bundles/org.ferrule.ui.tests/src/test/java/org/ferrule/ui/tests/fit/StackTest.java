/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.navigator.CommonNavigator;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.ui.WorkbenchIds;
import org.ferrule.ui.fit.FitIds;
import org.ferrule.ui.fit.answer.PairSelectionProvider;
import org.ferrule.ui.fit.stack.StackEntry;
import org.ferrule.ui.fit.stack.StackRequest;
import org.ferrule.ui.fit.stack.StackView;
import org.ferrule.ui.tests.robot.Dialogs;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.Projects;
import org.ferrule.ui.tests.robot.Proposals;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Trees;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Devices that lie in each other. */
class StackTest {

    private static final String RULES = "house.rules.json";
    private static final StackRequest NOTHING = new StackRequest(List.of(), "", RULES);
    private static final StackRequest SYSTEM = new StackRequest(
            List.of(StackEntry.of("brn-sheath-6fr-11"), StackEntry.of("brn-guide-6fr-left-100").ahead("80 cm"),
                    StackEntry.of("pel-extension-6fr").ahead("8 cm"), StackEntry.of("pel-micro-150").ahead("5 cm"),
                    StackEntry.of("hes-workhorse-300").ahead("6 cm")),
            "2.4 mm", RULES);

    private Robot robot;
    private IProject project;
    private StackView view;

    @BeforeEach
    void open() throws CommandException, CoreException {
        PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(WorkbenchIds.OPEN_DEMO, null);
        project = ResourcesPlugin.getWorkspace().getRoot().getProject("Demo");
        robot = new Robot();
        show();
        view.ask(project, NOTHING);
        robot.waitFor("nothing filled in", () -> view.answered().isEmpty() && table().getItemCount() == 0);
    }

    private void show() throws CoreException {
        view = (StackView) EditorFixture.page().showView(FitIds.STACK_VIEW);
        robot.waitForJobs();
    }

    @AfterEach
    void close() throws CoreException {
        EditorFixture.page().setPartState(EditorFixture.page().getReference(view), IWorkbenchPage.STATE_RESTORED);
        EditorFixture.page().closeAllEditors(false);
        EditorFixture.page().hideView(view);
        robot.waitForJobs();
        Projects.delete(project);
        robot.settle();
    }

    private Composite body() {
        return view.canvas().getParent();
    }

    private Table table() {
        return Widgets.first(body(), Table.class, any -> true).orElseThrow();
    }

    private void maximize() {
        EditorFixture.page().setPartState(EditorFixture.page().getReference(view), IWorkbenchPage.STATE_MAXIMIZED);
        robot.settle();
    }

    private void askSystem() {
        view.ask(project, SYSTEM);
        robot.waitFor("an answer", () -> view.answered().filter(a -> a.devices().size() == 5).isPresent());
        robot.waitFor("a picture", () -> view.canvas().picture().isPresent());
    }

    private void select(int row) {
        FormToolkit.ensureVisible(table());
        robot.settle();
        robot.click(table(), 60, table().getItem(row).getBounds().y + 6);
        robot.waitFor("the row", () -> table().getSelectionIndex() == row);
    }

    private List<String> devices() {
        return view.request().entries().stream().map(entry -> entry.device().substring(
                entry.device().indexOf('!') + 1)).toList();
    }

    @Test
    void saysWhatToDoWhileNothingIsFilledIn() {
        maximize();
        new ScreenPicture().take("stack-empty");
        assertTrue(view.canvas().picture().isEmpty());
        assertTrue(view.words().startsWith("Add the devices from the outside to the inside"), view.words());
    }

    @Test
    void answersEveryLevelInTheOneAround() {
        askSystem();
        new ScreenPicture().take("stack-docked");
        maximize();
        new ScreenPicture().take("stack");
        assertTrue(table().getItem(1).getText(1).startsWith("fits"), table().getItem(1).getText(1));
        assertEquals("", table().getItem(0).getText(1), "nothing is asked of the outermost");
        assertTrue(view.words().contains("tip lies"), view.words());
        assertEquals(5, view.levels().size(), "a line for each level");
        List<String> guide = view.levels().get(1);
        assertEquals("fits", guide.get(0));
        assertTrue(guide.get(1).endsWith("mm"), guide::toString);
        assertTrue(guide.get(2).contains(" in Introducer sheath"), guide::toString);
        assertTrue(view.canvas().picture().orElseThrow().description().contains("Fits"));
    }

    @Test
    void theCollarOfAnExtensionIsAStepWithItsCaution() {
        askSystem();
        select(3);
        robot.waitFor("the reasons of the microcatheter", () -> view.words().contains("is a step"));
        new ScreenPicture().take("stack-selected");
        assertEquals("pel-micro-150", PairSelectionProvider
                .pairIn(view.getSite().getSelectionProvider().getSelection()).orElseThrow().question().inner()
                .device().id());
    }

    /** A wire that was typed and not chosen must not be taken for the largest that goes. */
    @Test
    void wordsForAWireAreNoneUntilOneIsChosen() {
        askSystem();
        select(3);
        Text wire = Widgets.labelled(body(), "Over wire", Text.class);
        FormToolkit.ensureVisible(wire);
        wire.setFocus();
        robot.waitFor("the focus", wire::isFocusControl);
        robot.keys(SWT.MOD1, 'a');
        robot.type("w");
        robot.waitFor("no answer", () -> view.answered().isEmpty());
        assertTrue(view.words().startsWith("\u201cw\u201d is no device yet"), view.words());
        new Proposals(robot, body().getShell()).choose("Workhorse guidewire .014 in, 190 cm");
        robot.waitFor("an answer", () -> view.answered().isPresent());
        assertTrue(view.request().entries().get(3).wire().endsWith("!hes-workhorse-190"),
                view.request().entries().get(3).wire());
    }

    private Table levels() {
        return Widgets.all(body(), Table.class).filter(any -> any != table() && any.getColumnCount() == 3).findFirst()
                .orElseThrow();
    }

    @Test
    void aLineOfTheListTellsTheReasonsOfItsLevelAndIsCopied() {
        askSystem();
        maximize();
        robot.click(levels(), 40, levels().getItem(2).getBounds().y + 6);
        robot.waitFor("the extension", () -> table().getSelectionIndex() == 2);
        robot.key(SWT.ARROW_DOWN);
        robot.waitFor("the microcatheter", () -> table().getSelectionIndex() == 3);
        robot.waitFor("its reasons", () -> view.words().contains("is a step"));
        assertEquals(3, levels().getSelectionIndex());
        new ScreenPicture().take("stack-line");
        robot.keys(SWT.CTRL, 'c');
        robot.waitFor("the list in the clipboard", () -> clipboard().startsWith("Verdict\tLeft at worst\t"));
        assertEquals(6, clipboard().lines().count(), "heads and levels");
        levels().setFocus();
        robot.key(SWT.TAB);
        robot.waitFor("the reasons", () -> levels().getDisplay().getFocusControl() instanceof StyledText);
        robot.keys(SWT.CTRL, 'c');
        robot.waitFor("the reasons in the clipboard", () -> clipboard().contains("is a step"));
    }

    private static String clipboard() {
        Clipboard clipboard = new Clipboard(Display.getCurrent());
        try {
            return String.valueOf(clipboard.getContents(TextTransfer.getInstance()));
        } finally {
            clipboard.dispose();
        }
    }

    @Test
    void theExplorersMenuPutsDevicesIntoEachOther() throws CoreException {
        CommonNavigator explorer = (CommonNavigator) EditorFixture.page().showView(IPageLayout.ID_PROJECT_EXPLORER);
        Tree tree = explorer.getCommonViewer().getTree();
        expand(tree, "Demo");
        expand(tree, "access-and-guides.devices.json");
        expand(tree, "Guide catheter 6 Fr");
        choose(tree, "Guide catheter 6 Fr, backup-type left curve, 100 cm");
        new Dialogs(robot).menu(tree, 'e');
        robot.waitFor("the guide", () -> devices().equals(List.of("brn-guide-6fr-left-100")));
        assertEquals(view, EditorFixture.page().getActivePart(), "the view is shown");
        expand(tree, "balloons.devices.json");
        expand(tree, "Semi-compliant balloon, rapid exchange");
        choose(tree, "Semi-compliant balloon 1.50 x 15 mm");
        new Dialogs(robot).menu(tree, 'e');
        robot.waitFor("the balloon inside the guide",
                () -> devices().equals(List.of("brn-guide-6fr-left-100", "dun-sc-150-15")));
        robot.waitFor("an answer", () -> view.answered().isPresent());
        robot.waitFor("both in the table", () -> table().getItemCount() == 2);
        new ScreenPicture().take("stack-from-explorer");
    }

    private void expand(Tree tree, String text) {
        robot.waitFor(text, () -> item(tree, text).isPresent());
        tree.setTopItem(item(tree, text).orElseThrow());
        robot.settle();
        Trees.expand(robot, item(tree, text).orElseThrow());
    }

    private void choose(Tree tree, String text) {
        robot.waitFor(text, () -> item(tree, text).isPresent());
        tree.setTopItem(item(tree, text).orElseThrow());
        robot.settle();
        Trees.click(robot, item(tree, text).orElseThrow());
        robot.waitFor("the selected line",
                () -> Stream.of(tree.getSelection()).anyMatch(i -> i.getText().equals(text)));
    }

    private static Optional<TreeItem> item(Tree tree, String text) {
        return Trees.items(tree).filter(item -> item.getText().equals(text)).findFirst();
    }

    @Test
    void keysTakeOutAndMove() {
        askSystem();
        select(4);
        robot.key(SWT.DEL);
        robot.waitFor("one less", () -> view.answered().filter(a -> a.devices().size() == 4).isPresent());
        assertFalse(devices().contains("hes-workhorse-300"));
        select(3);
        robot.keyWith(SWT.ALT, SWT.ARROW_UP);
        robot.waitFor("the microcatheter outside the extension",
                () -> devices().indexOf("pel-micro-150") == 2 && devices().indexOf("pel-extension-6fr") == 3);
        robot.waitFor("another answer", () -> view.answered().flatMap(a -> a.verdict(3, Phase.IN))
                .filter(v -> v.verdict() == Verdict.BLOCKED).isPresent());
        new ScreenPicture().take("stack-blocked");
    }

    @Test
    void typedPlaceOfATipIsAnsweredOrToldToBeUnreadable() {
        askSystem();
        select(2);
        Text ahead = Widgets.labelled(body(), "Tip beyond", Text.class);
        FormToolkit.ensureVisible(ahead);
        robot.settle();
        robot.replace(ahead, "60 cm");
        robot.waitFor("no answer: the collar would have left the guide", () -> view.answered().isEmpty());
        new ScreenPicture().take("stack-refused");
        robot.replace(ahead, "9 cm");
        robot.waitFor("an answer", () -> view.answered().isPresent());
        assertEquals("9 cm", view.request().entries().get(2).ahead());
    }

    @Test
    void aDeviceIsFoundByWordsOfItsName() {
        Text add = Widgets.labelled(body(), "Add", Text.class);
        add.setFocus();
        robot.settle();
        robot.type("6fr-left-100");
        Proposals proposals = new Proposals(robot, body().getShell());
        robot.waitFor("proposals", proposals::areShown);
        new ScreenPicture().take("stack-proposals");
        proposals.choose(0);
        robot.waitFor("a device", () -> view.request().entries().size() == 1);
        assertEquals("", add.getText());
        assertEquals(1, table().getItemCount());
    }

    @Test
    void comesBackAsItWasLeft() throws CoreException {
        askSystem();
        StackRequest before = view.request();
        EditorFixture.page().hideView(view);
        show();
        robot.waitFor("the same answer", () -> view.answered().filter(a -> a.devices().size() == 5).isPresent());
        assertEquals(before, view.request());
    }

    @Test
    void aClickIntoThePictureSelectsADevice() {
        askSystem();
        maximize();
        robot.waitFor("the picture", () -> view.canvas().boundsOf("level:1").isPresent());
        var name = view.canvas().boundsOf("level:1").orElseThrow();
        robot.clickPainted(view.canvas(), name.x + name.width - 4, name.y + name.height / 2);
        robot.settle();
        new ScreenPicture().take("stack-clicked");
    }
}
