/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.ui.PartInitException;
import org.ferrule.chart.look.Scheme;
import org.ferrule.chart.look.VerdictLook;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.model.ModelPackage;
import org.ferrule.picture.Ink;
import org.ferrule.quantity.Dimension;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.fit.matrix.Side;
import org.ferrule.ui.look.Colours;
import org.ferrule.ui.problem.ProblemMarkers;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** One dimension of a library is edited while a chart that refers to it is open. */
class LiveEditTest {

    private static final String CHART = "balloons-through-guides.chart.json";
    private static final String LIBRARY = "access-and-guides.devices.json";
    private static final String GUIDE = "kes-guide-6fr-right-100";
    private static final String SECTION = "devices[" + GUIDE + "]/lumens[0]/sections[0]";

    private ChartFixture fixture;
    private String inner;

    @BeforeEach
    void open() throws CommandException, PartInitException {
        fixture = ChartFixture.ofDemo(CHART);
        inner = fixture.table().content().axis(Side.INNER).line(0).head().id();
        fixture.select(GUIDE, inner);
        fixture.robot().waitForJobs();
    }

    @AfterEach
    void close() throws CoreException {
        fixture.close();
    }

    private DocumentSession library() {
        return fixture.session(LIBRARY);
    }

    private void narrow() {
        library().set(fixture.object(LIBRARY, SECTION), ModelPackage.Literals.LUMEN_SECTION__ID,
                Dimension.parse("0.020 in min"));
        fixture.robot().settle();
        fixture.waitUntilAnswered();
    }

    private Verdict verdict() {
        return fixture.pair(GUIDE, inner).answer().in().verdict();
    }

    private int inkOf(VerdictLook look) {
        Ink ink = look.tone(Colours.dark() ? Scheme.DARK : Scheme.LIGHT).ground();
        return fixture.pixels(fixture.bounds(GUIDE, inner), new RGB(ink.red(), ink.green(), ink.blue()));
    }

    private long markersAboutGuide() throws CoreException {
        String name = fixture.pair(GUIDE, inner).question().outer().device().name();
        IMarker[] markers = fixture.file(CHART).findMarkers(ProblemMarkers.TYPE, true, IResource.DEPTH_ZERO);
        return Stream.of(markers).filter(m -> m.getAttribute(IMarker.MESSAGE, "").startsWith(name + ":")).count();
    }

    @Test
    void verdictFollowsAnEditThatIsNotSaved() {
        assertNotEquals(Verdict.BLOCKED, verdict());
        narrow();
        assertEquals(Verdict.BLOCKED, verdict());
        new ScreenPicture().take("matrix-just-changed");
        assertTrue(inkOf(VerdictLook.BLOCKED) > 100, "the cell is not painted as blocked");
        assertEquals(Verdict.BLOCKED, fixture.grounds().panel().shown().orElseThrow().answer().in().verdict());
    }

    @Test
    void onlyTheRowOfTheDeviceIsAnsweredAnew() {
        narrow();
        int row = fixture.position(Side.OUTER, GUIDE);
        var solved = fixture.editor().answers().shown().orElseThrow();
        assertFalse(solved.matrix().changes().isEmpty());
        assertTrue(solved.matrix().changes().stream()
                .allMatch(change -> change.outerIndex() == fixture.table().content().axis(Side.OUTER).index(row)));
    }

    @Test
    void undoBringsTheVerdictBack() {
        Verdict before = verdict();
        narrow();
        library().undo();
        fixture.robot().settle();
        fixture.waitUntilAnswered();
        assertEquals(before, verdict());
        assertFalse(library().dirty());
    }

    @Test
    void savedEditIsThereWhenTheChartIsOpenedAgain() throws CoreException {
        narrow();
        library().save(new NullProgressMonitor());
        EditorFixture.page().closeAllEditors(false);
        fixture.robot().settle();
        fixture.open(CHART);
        assertEquals(Verdict.BLOCKED, verdict());
    }

    @Test
    void markersOfTheChartFollow() throws CoreException {
        fixture.robot().waitFor("markers", () -> markers() > 0);
        narrow();
        library().save(new NullProgressMonitor());
        fixture.robot().waitFor("no tight pair of a blocked guide", () -> {
            try {
                return markersAboutGuide() == 0;
            } catch (CoreException e) {
                throw new AssertionError(e);
            }
        });
    }

    private long markers() {
        try {
            return fixture.file(CHART).findMarkers(ProblemMarkers.TYPE, true, IResource.DEPTH_ZERO).length;
        } catch (CoreException e) {
            throw new AssertionError(e);
        }
    }
}
