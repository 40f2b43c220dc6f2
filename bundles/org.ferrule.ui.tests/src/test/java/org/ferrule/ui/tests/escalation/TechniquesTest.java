/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.ui.tests.escalation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.ferrule.model.Technique;
import org.ferrule.model.TechniqueLibrary;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Techniques, their tries and what belongs to them are edited in their editor. */
class TechniquesTest {

    private EditorFixture fixture;
    private Robot robot;

    @BeforeEach
    void open() throws CoreException {
        fixture = new EditorFixture(CaseSamples.TECHNIQUES_FILE, CaseSamples.TECHNIQUES);
        robot = fixture.robot();
    }

    @AfterEach
    void close() throws CoreException {
        fixture.close();
    }

    private Technique first() {
        return ((TechniqueLibrary) fixture.editor().session().document().orElseThrow()).getTechniques().get(0);
    }

    private Tree tree() {
        return Widgets.first(fixture.body(), Tree.class, any -> true).orElseThrow();
    }

    private TreeItem group(String name) {
        return Stream.of(tree().getItems()).filter(item -> item.getText().startsWith(name)).findFirst()
                .orElseThrow(() -> new AssertionError("there is no group " + name));
    }

    private void fill(String label, String text) {
        Text field = Widgets.labelled(fixture.body(), label, Text.class);
        robot.click(field);
        robot.waitFor("the focus", field::isFocusControl);
        field.selectAll();
        robot.type(text);
        robot.key(SWT.CR);
        robot.settle();
    }

    @Test
    void theTreeNamesTechniquesAndSetupsInTheirOrder() {
        new ScreenPicture().take("techniques");
        assertTrue(group("Techniques").getItem(0).getText().endsWith("Small balloon"));
        assertTrue(group("Set-ups").getItem(0).getText().endsWith("Guide extension in place"));
    }

    @Test
    void aTechniqueIsRenamedAndUndoTakesItBack() {
        fixture.reveal("techniques[0]");
        fill("Name", "tiny balloon");
        robot.waitFor("the name", () -> "tiny balloon".equals(first().getName()));
        assertTrue(fixture.editor().session().dirty());
        new ScreenPicture().take("technique");
        robot.keys(SWT.MOD1, 'z');
        robot.waitFor("the former name", () -> "Small balloon".equals(first().getName()));
        assertFalse(fixture.editor().session().dirty());
    }

    @Test
    void aTechniqueIsRemovedAndUndoBringsItBack() {
        fixture.reveal("techniques[0]");
        robot.clickUntil("another first technique", Widgets.button(fixture.body(), "Remove"),
                () -> "deep-balloon".equals(first().getId()));
        fixture.editor().session().undo();
        assertEquals("small-balloon", first().getId());
    }
}
