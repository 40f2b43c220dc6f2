/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.PartInitException;
import org.ferrule.ui.fit.matrix.Side;
import org.ferrule.ui.problem.ProblemMarkers;
import org.ferrule.ui.tests.robot.Projects;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Another program breaks or deletes what an open chart refers to. */
class BrokenLibraryTest {

    private static final String CHART = "balloons-through-guides.chart.json";
    private static final String LIBRARY = "balloons.devices.json";

    private ChartFixture fixture;
    private int columns;

    @BeforeEach
    void open() throws CommandException, PartInitException {
        fixture = ChartFixture.ofDemo(CHART);
        columns = fixture.table().content().axis(Side.INNER).size();
        fixture.robot().waitForJobs();
    }

    @AfterEach
    void close() throws CoreException {
        fixture.close();
    }

    private boolean saysThatIsWrong(String file) {
        Composite body = (Composite) fixture.editor().getActivePageInstance().getPartControl();
        return Widgets.first(body, Label.class, label -> label.getText().contains(file)
                && label.getText().contains("last good answer")).isPresent();
    }

    private boolean hasError(String file) {
        try {
            for (IMarker marker : fixture.file(CHART).findMarkers(ProblemMarkers.TYPE, true, IResource.DEPTH_ZERO)) {
                if (marker.getAttribute(IMarker.SEVERITY, 0) == IMarker.SEVERITY_ERROR
                        && marker.getAttribute(IMarker.MESSAGE, "").contains(file)) {
                    return true;
                }
            }
            return false;
        } catch (CoreException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void lastGoodAnswerStaysWhileALibraryIsBroken() throws CoreException {
        IFile file = fixture.file(LIBRARY);
        Projects.write(fixture.project(), LIBRARY, "{ \"format\": \"ferrule.devices\", ");
        fixture.robot().waitFor("a message", () -> saysThatIsWrong(file.getName()));
        new ScreenPicture().take("matrix-broken-library");
        assertEquals(columns, fixture.table().content().axis(Side.INNER).size());
        fixture.robot().waitFor("an error in Problems", () -> hasError(LIBRARY));
    }

    @Test
    void missingRulesAreNamed() throws CoreException {
        fixture.file("house.rules.json").delete(true, null);
        fixture.robot().waitFor("a message", () -> saysThatIsWrong("house.rules.json"));
        assertTrue(fixture.editor().answers().shown().isPresent());
        fixture.robot().waitFor("an error in Problems", () -> hasError("house.rules.json"));
    }
}
