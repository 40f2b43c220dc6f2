/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.ferrule.fit.passage.Bend.Where;
import org.ferrule.fit.passage.Conditions;
import org.ferrule.model.FitChart;
import org.ferrule.quantity.Length;
import org.ferrule.ui.fit.setup.SetUpPage;
import org.ferrule.ui.problem.ProblemMarkers;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What else lies in the lumen and on the way is edited on the set-up page, and the matrix follows. */
class ConditionsTest {

    private static final String CHART = "balloons-through-guides.chart.json";
    private static final String GUIDE = "kes-guide-6fr-right-100";
    private static final String BALLOON = "dun-sc-200-15";
    private static final String INSIDE = "Already inside";

    private ChartFixture fixture;
    private Robot robot;

    @BeforeEach
    void open() throws CommandException, PartInitException {
        fixture = ChartFixture.ofDemo(CHART);
        robot = fixture.robot();
        robot.waitForJobs();
        fixture.editor().setActivePage(SetUpPage.ID);
        robot.settle();
    }

    @AfterEach
    void close() throws CoreException {
        fixture.close();
    }

    private Composite page() {
        return fixture.editor().getActivePageInstance().getPartControl().getParent();
    }

    private void click(Control control) {
        FormToolkit.ensureVisible(control);
        robot.settle();
        robot.click(control);
        robot.settle();
    }

    private void add(Table entries) {
        Button add = Widgets.button(entries.getParent(), "Add");
        robot.scrollTo(add);
        robot.clickUntil("an entry", add, () -> entries.getItemCount() == 1);
    }

    /** A click comes back from the display server after a while; so fields that it brings are waited for. */
    private Text field(String label) {
        robot.waitFor("the field " + label, () -> Widgets.first(page(), Label.class,
                each -> each.getText().equals(label)).isPresent());
        return Widgets.labelled(page(), label, Text.class);
    }

    private Table inside() {
        return Widgets.labelled(page(), INSIDE, Table.class);
    }

    /** A device that the libraries have is listed by its name. */
    private void addDevice(String id, String shown) {
        add(inside());
        robot.replace(field("Device"), id);
        robot.key(SWT.CR);
        robot.waitFor("the device", () -> inside().getItem(0).getText().equals(shown));
    }

    private Conditions conditions() {
        return fixture.editor().answers().shown().orElseThrow().chart().question().conditions();
    }

    private long clearance() {
        return fixture.pair(GUIDE, BALLOON).answer().in().clearance().orElseThrow().nominal().thirdNanometres();
    }

    private FitChart chart() {
        return fixture.editor().answers().chart().orElseThrow();
    }

    @Test
    void aDeviceInsideNarrowsTheCellsAndUndoWidensThemAgain() {
        long alone = clearance();
        addDevice("dun-sc-250-15", "Semi-compliant balloon 2.50 x 15 mm");
        robot.waitFor("an answer with it", () -> conditions().inside().size() == 1
                && !fixture.editor().answers().stale());
        new ScreenPicture().take("setup-device-inside");
        assertTrue(clearance() < alone, "the second balloon takes room");
        fixture.editor().session().undo();
        fixture.editor().session().undo();
        robot.waitFor("the former answer", () -> conditions().alone() && !fixture.editor().answers().stale());
        assertEquals(alone, clearance());
        assertEquals(0, inside().getItemCount());
    }

    @Test
    void anUnknownDeviceIsAnErrorBelowItsField() throws CoreException {
        addDevice("no-such-device", "no-such-device");
        robot.waitFor("words below the field", () -> Widgets.all(page(), StyledText.class)
                .anyMatch(text -> text.getText().contains("no-such-device")));
        fixture.editor().session().save(new NullProgressMonitor());
        robot.waitFor("a marker at the element", () -> List.of(markers()).stream()
                .anyMatch(marker -> marker.getAttribute(ProblemMarkers.FEATURE, "").equals("device")
                        && marker.getAttribute(ProblemMarkers.PATH, "").startsWith("conditions/inside")));
    }

    private IMarker[] markers() {
        try {
            return fixture.file(CHART).findMarkers(ProblemMarkers.TYPE, true, IResource.DEPTH_ZERO);
        } catch (CoreException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void anExtensionIsPassedWhenItIsStated() {
        Button state = Widgets.first(page(), Button.class, button -> "Through a guide extension"
                .equals(button.getToolTipText())).orElseThrow();
        click(state);
        robot.replace(field("Guide extension"), "pel-extension-6fr");
        robot.key(SWT.CR);
        robot.waitFor("the extension",
                () -> "pel-extension-6fr".equals(chart().getConditions().getThrough().getExtension()));
        new ScreenPicture().take("setup-extension");
        robot.clickUntil("no extension", state, () -> chart().getConditions().getThrough() == null);
    }

    @Test
    void aBendIsAskedAboutAsSoonAsItHasARadius() {
        Table bends = Widgets.labelled(page(), "Bends", Table.class);
        add(bends);
        new ScreenPicture().take("setup-bend");
        robot.replace(field("Radius"), "20 mm");
        robot.key(SWT.CR);
        robot.waitFor("a bend in the question", () -> conditions().bends().size() == 1);
        assertEquals("20 mm", bends.getItem(0).getText(1));
    }

    @Test
    void aBentVesselHasADiameterFromWhichIsToldHowItMustStraighten() {
        add(Widgets.labelled(page(), "Bends", Table.class));
        robot.replace(field("Radius"), "15 mm");
        robot.key(SWT.CR);
        robot.waitFor("a bend in the question", () -> conditions().bends().size() == 1);
        Combo place = Widgets.labelled(page(), "What is bent", Combo.class);
        place.setFocus();
        robot.settle();
        robot.key(SWT.ARROW_DOWN);
        robot.waitFor("the lumen, stated", () -> place.getText().equals("lumen"));
        robot.key(SWT.ARROW_DOWN);
        robot.waitFor("a bend of the vessel",
                () -> conditions().bends().stream().allMatch(bend -> bend.where() == Where.VESSEL));
        robot.replace(field("Vessel diameter"), "3 mm");
        robot.key(SWT.CR);
        robot.waitFor("the vessel in the question",
                () -> conditions().bends().get(0).vessel().equals(Optional.of(Length.ofMm(3))));
        new ScreenPicture().take("setup-bent-vessel");
        fixture.editor().session().undo();
        robot.waitFor("a vessel without diameter", () -> conditions().bends().get(0).vessel().isEmpty());
    }
}
