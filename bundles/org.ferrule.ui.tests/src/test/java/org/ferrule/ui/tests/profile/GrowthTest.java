/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.profile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.ide.IDE;
import org.ferrule.model.ElementPath;
import org.ferrule.model.ModelPackage;
import org.ferrule.quantity.Dimension;
import org.ferrule.ui.edit.DocumentEditor;
import org.ferrule.ui.profile.ProfileIds;
import org.ferrule.ui.profile.growth.GrowthView;
import org.ferrule.ui.tests.robot.Dialogs;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Growth curves of balloons over each other. */
class GrowthTest {

    private static final String ROW = "devices[dun-sc-300-15]/balloon/compliance[0]";

    private PlotFixture fixture;
    private Robot robot;
    private Dialogs dialogs;
    private IProject project;
    private GrowthView view;

    @BeforeEach
    void open() throws CommandException, CoreException {
        fixture = new PlotFixture(ProfileIds.GROWTH_VIEW);
        view = (GrowthView) fixture.view();
        project = fixture.project();
        robot = fixture.robot();
        dialogs = fixture.dialogs();
        fixture.add(0, "Balloons", "semi-compliant balloon 3.00");
        fixture.add(0, "Balloons", "non-compliant balloon 3.00");
        fixture.add(0, "Balloons", "twin-layer balloon 3.00");
        robot.waitFor("three curves", () -> view.growth().filter(g -> g.balloons().size() == 3).isPresent());
        robot.waitFor("a plot", () -> view.canvas().boundsOf("growth:kol-twin-300-15").isPresent());
    }

    @AfterEach
    void close() throws CoreException {
        fixture.close();
    }

    private Composite body() {
        return fixture.body();
    }

    @Test
    void showsRowsNominalAndRatedBurst() {
        new ScreenPicture().take("growth");
        assertTrue(view.canvas().boundsOf("nominal:dun-sc-300-15").isPresent());
        assertTrue(view.canvas().boundsOf("rated:dun-nc-300-15").isPresent());
        List<String> first = view.texts().get(0);
        assertEquals(List.of("6 atm", "2.910 mm"), first.subList(0, 2));
        assertEquals("\u2013", first.get(2), "nothing below the table");
    }

    @Test
    void aBalloonCanBeRemovedByKey() {
        Table balloons = Widgets.first(body(), Table.class, t -> t.isVisible() && t.getColumnCount() == 0
                && t.getItemCount() == 3).orElseThrow();
        balloons.setFocus();
        balloons.setSelection(2);
        robot.key(SWT.DEL);
        robot.waitFor("two curves", () -> view.growth().filter(g -> g.balloons().size() == 2).isPresent());
    }

    @Test
    void theTableIsCopiedForASpreadsheet() {
        Table table = Widgets.first(body(), Table.class, t -> t.isVisible() && t.getColumnCount() == 4).orElseThrow();
        table.setFocus();
        dialogs.menu(table, 'c');
        Clipboard clipboard = new Clipboard(table.getDisplay());
        try {
            robot.waitFor("the clipboard",
                    () -> String.valueOf(clipboard.getContents(TextTransfer.getInstance())).startsWith("Pressure\tA "));
            assertTrue(clipboard.getContents(TextTransfer.getInstance()).toString().contains("6 atm\t2.910 mm\t"));
        } finally {
            clipboard.dispose();
        }
    }

    @Test
    void followsAnEditAndItsUndo() throws CoreException {
        EditorFixture.page().setPartState(EditorFixture.page().getReference(view), IWorkbenchPage.STATE_RESTORED);
        DocumentEditor editor = (DocumentEditor) IDE.openEditor(EditorFixture.page(),
                project.getFile("balloons.devices.json"));
        EObject row = editor.session().document().flatMap(d -> ElementPath.resolve(d, ROW)).orElseThrow();
        editor.session().set(row, ModelPackage.Literals.COMPLIANCE_ROW__DIAMETER, Dimension.parse("2.85 mm"));
        robot.waitFor("the edit", () -> view.texts().get(0).get(1).equals("2.850 mm"));
        editor.setFocus();
        robot.settle();
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("as before", () -> view.texts().get(0).get(1).equals("2.910 mm"));
    }
}
