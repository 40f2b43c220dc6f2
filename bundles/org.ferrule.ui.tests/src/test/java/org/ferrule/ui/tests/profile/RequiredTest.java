/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.profile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Scale;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.ide.IDE;
import org.ferrule.model.ElementPath;
import org.ferrule.model.ModelPackage;
import org.ferrule.quantity.Dimension;
import org.ferrule.ui.edit.DocumentEditor;
import org.ferrule.ui.profile.ProfileIds;
import org.ferrule.ui.profile.required.RequiredView;
import org.ferrule.ui.tests.robot.Dialogs;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A diameter that is slid along, and the partners that flip. */
class RequiredTest {

    private static final String LIBRARY = "balloons.devices.json";
    private static final String BALLOON = "devices[dun-nc-500-8]/sections[0]";

    private PlotFixture fixture;
    private Robot robot;
    private Dialogs dialogs;
    private IProject project;
    private RequiredView view;

    @BeforeEach
    void open() throws CommandException, CoreException {
        fixture = new PlotFixture(ProfileIds.REQUIRED_VIEW);
        view = (RequiredView) fixture.view();
        project = fixture.project();
        robot = fixture.robot();
        dialogs = fixture.dialogs();
        fixture.add(0, "Device", "non-compliant balloon 5.00");
        fixture.add(1, "Partners", "inner catheter 4 fr");
        fixture.add(1, "Partners", "inner catheter 5 fr");
        Combo section = Widgets.labelled(body(), "Section", Combo.class);
        robot.waitFor("sections", () -> section.getItemCount() > 1);
        section.setFocus();
        robot.key(SWT.ARROW_DOWN);
        robot.waitFor("lanes along the balloon", () -> title().startsWith("How thick may balloon"));
    }

    @AfterEach
    void close() throws CoreException {
        fixture.close();
    }

    private Composite body() {
        return fixture.body();
    }

    private String title() {
        return view.canvas().picture().map(picture -> picture.title()).orElse("");
    }

    private String described() {
        return view.canvas().picture().map(picture -> picture.description()).orElse("");
    }

    @Test
    void showsALaneForEachPartnerWithItsFlips() {
        new ScreenPicture().take("required");
        assertTrue(described().contains("Inner catheter 4 Fr, 122 cm: fits up to "), described());
        assertTrue(described().contains("then blocked"), described());
        assertTrue(view.canvas().boundsOf("flip:0:0").isPresent() && view.canvas().boundsOf("lane:1").isPresent());
        assertTrue(view.said().endsWith("As at the printed diameter."), view.said());
    }

    @Test
    void keysSlideTheDiameterAndPartnersFlip() {
        view.slider().setFocus();
        robot.waitFor("the keyboard", view.slider()::isFocusControl);
        int before = view.slider().getSelection();
        robot.key(SWT.ARROW_LEFT);
        assertEquals(before - 1, view.slider().getSelection());
        for (int i = 0; i < 3; i++) {
            robot.key(SWT.PAGE_DOWN);
        }
        Scale slider = view.slider();
        robot.waitFor("another diameter", () -> Math.abs(slider.getSelection() - before) > 20);
        robot.key(SWT.HOME);
        robot.waitFor("flipped partners", () -> view.said().contains("\u2192 fits"));
        new ScreenPicture().take("required-slid");
        assertTrue(view.said().contains("Inner catheter 4 Fr, 122 cm blocked \u2192 fits"), view.said());
        robot.click(Widgets.first(body(), Button.class, b -> b.getText().equals("As printed")).orElseThrow());
        robot.waitFor("as printed", () -> view.said().endsWith("As at the printed diameter."));
    }

    @Test
    void theMouseSlidesToo() {
        Scale slider = view.slider();
        int before = slider.getSelection();
        robot.click(slider, 12, slider.getSize().y / 2);
        robot.waitFor("another diameter", () -> slider.getSelection() != before);
        assertFalse(view.said().isEmpty());
    }

    @Test
    void tellsWhatDecides() {
        CTabFolder folder = Widgets.first(body(), CTabFolder.class,
                f -> f.getItemCount() == 2 && f.getItem(1).getText().equals("What decides")).orElseThrow();
        Rectangle tab = folder.getItem(1).getBounds();
        robot.clickPainted(folder, tab.x + tab.width / 2, tab.y + tab.height / 2);
        robot.waitFor("bars", () -> view.bars().isVisible() && view.bars().boundsOf("bar:0").isPresent());
        robot.settle();
        new ScreenPicture().take("required-decides");
        assertTrue(view.bars().picture().orElseThrow().description().contains("dun-nc-500-8"),
                view.bars().picture().orElseThrow().description());
    }

    @Test
    void comingOutIsAnotherQuestion() {
        Combo way = Widgets.labelled(body(), "Way", Combo.class);
        way.setFocus();
        robot.key(SWT.ARROW_DOWN);
        robot.waitFor("coming out", () -> title().endsWith("(coming out)"));
    }

    @Test
    void followsAnEditAndItsUndo() throws CoreException {
        String before = view.said();
        EditorFixture.page().setPartState(EditorFixture.page().getReference(view), IWorkbenchPage.STATE_RESTORED);
        IFile library = project.getFile(LIBRARY);
        DocumentEditor editor = (DocumentEditor) IDE.openEditor(EditorFixture.page(), library);
        EObject section = editor.session().document().flatMap(d -> ElementPath.resolve(d, BALLOON)).orElseThrow();
        editor.session().set(section, ModelPackage.Literals.SHAFT_SECTION__OD, Dimension.parse("1.05 mm"));
        robot.waitFor("another diameter", () -> view.said().startsWith("At 1.0500 mm"));
        editor.setFocus();
        robot.settle();
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("as before", () -> view.said().equals(before));
    }

    @Test
    void savesWhatIsSeen(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("required.svg");
        robot.click(view.canvas(), view.canvas().getSize().x / 2, view.canvas().getSize().y / 3);
        dialogs.open(() -> dialogs.menu(view.canvas(), 's'), "Save picture", shell -> {
            Text name = Widgets.labelled(shell, "File", Text.class);
            robot.replace(name, file.toString());
            dialogs.close(shell, Widgets.button(shell, "Save"));
        });
        robot.waitFor("the file", () -> Files.exists(file));
        String svg = Files.readString(file);
        assertTrue(svg.contains("lane:1") && svg.contains("Rule set: House rules of the laboratory"), svg);
    }
}
