/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.views.contentoutline.ContentOutline;
import org.eclipse.ui.views.properties.PropertySheet;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Trees;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The outline and the Properties view follow the editor, and lead back to it. */
class OutlineTest {
    private EditorFixture fixture;
    private Robot robot;
    private ContentOutline outline;

    @BeforeEach
    void open() throws CoreException {
        fixture = new EditorFixture(Samples.RULES_FILE, Samples.RULES);
        robot = fixture.robot();
        outline = (ContentOutline) EditorFixture.page().showView(IPageLayout.ID_OUTLINE);
        robot.waitFor("the outline", () -> tree().getItemCount() > 2);
    }

    @AfterEach
    void close() throws CoreException {
        fixture.close();
    }

    private Tree tree() {
        return (Tree) outline.getCurrentPage().getControl();
    }

    private static String selected(Tree tree) {
        return Stream.of(tree.getSelection()).map(TreeItem::getText).findFirst().orElse("");
    }

    private Text field() {
        return Widgets.labelled(fixture.body(), Samples.REQUIRED, Text.class);
    }

    private void showRule() {
        fixture.reveal(Samples.RULE);
        EditorFixture.page().activate(fixture.editor());
        robot.click(field());
    }

    @Test
    void followsTheEditor() {
        showRule();
        robot.waitFor("the rule in the outline", () -> selected(tree()).equals("any device in any device"));
        new ScreenPicture().take("outline");
    }

    @Test
    void leadsToTheEditor() {
        TreeItem clearances = item(tree(), "Required clearances (1)").orElseThrow();
        Trees.expand(robot, clearances);
        Trees.click(robot, clearances.getItem(0));
        robot.waitFor("its fields", () -> Widgets.first(fixture.body(), Text.class,
                text -> text.getText().equals("0.05 mm")).isPresent());
    }

    private static Optional<TreeItem> item(Tree tree, String text) {
        return Stream.of(tree.getItems()).filter(item -> item.getText().equals(text)).findFirst();
    }

    @Test
    void showsWhatIsAddedAndUndone() {
        showRule();
        Widgets.button(fixture.body(), "Add").setFocus();
        robot.type(" ");
        robot.waitFor("a second rule", () -> item(tree(), "Required clearances (2)").isPresent());
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("one rule", () -> item(tree(), "Required clearances (1)").isPresent());
    }

    @Test
    void propertiesShowWhatIsSelectedAndChangeIt() throws CoreException {
        showRule();
        PropertySheet properties = properties();
        EditorFixture.page().activate(fixture.editor());
        robot.click(field());
        robot.waitFor("the figure", () -> row(properties, Samples.REQUIRED).filter(row -> row.getText(1)
                .equals("0.05 mm")).isPresent());
        new ScreenPicture().take("properties");
        Tree tree = tree(properties);
        Rectangle value = row(properties, Samples.REQUIRED).orElseThrow().getBounds(1);
        robot.click(tree, value.x + 10, value.y + value.height / 2);
        robot.key(SWT.CR);
        robot.waitFor("an editor in the cell", () -> !Widgets.all(tree, Text.class).toList().isEmpty());
        robot.keys(SWT.CTRL, 'a');
        robot.type("0.09 mm");
        robot.key(SWT.CR);
        robot.waitFor("the change", () -> field().getText().equals("0.09 mm"));
        EditorFixture.page().activate(fixture.editor());
        robot.click(field());
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("the former figure", () -> field().getText().equals("0.05 mm"));
        assertEquals(List.of("0.05 mm"),
                row(properties, Samples.REQUIRED).map(row -> row.getText(1)).stream().toList());
        assertTrue(!fixture.editor().isDirty());
    }

    private static PropertySheet properties() throws CoreException {
        IViewPart view = EditorFixture.page().showView(IPageLayout.ID_PROP_SHEET);
        return (PropertySheet) view;
    }

    private static Tree tree(PropertySheet properties) {
        Shell shell = properties.getSite().getShell();
        Composite control = (Composite) properties.getCurrentPage().getControl();
        return control instanceof Tree tree ? tree : Widgets.all(shell, Tree.class).findFirst().orElseThrow();
    }

    private static Optional<TreeItem> row(PropertySheet properties, String name) {
        return Trees.items(tree(properties)).filter(item -> item.getText().equals(name)).findFirst();
    }
}
