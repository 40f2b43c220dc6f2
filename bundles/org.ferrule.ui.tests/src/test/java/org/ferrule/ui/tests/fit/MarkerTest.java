/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.ide.IDE;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.model.FitChart;
import org.ferrule.model.ModelPackage;
import org.ferrule.ui.fit.answer.AskedPair;
import org.ferrule.ui.fit.problem.PairCode;
import org.ferrule.ui.fit.setup.SetUpPage;
import org.ferrule.ui.problem.ProblemMarkers;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What the Problems view says of a chart. */
class MarkerTest {

    private static final String CHART = "stents-and-atherectomy-to-the-lesion.chart.json";

    private ChartFixture fixture;

    @BeforeEach
    void open() throws CommandException, PartInitException {
        fixture = ChartFixture.ofDemo(CHART);
        fixture.robot().waitForJobs();
    }

    @AfterEach
    void close() throws CoreException {
        fixture.close();
    }

    private List<IMarker> markers(int severity) {
        try {
            return Stream.of(fixture.file(CHART).findMarkers(ProblemMarkers.TYPE, true, IResource.DEPTH_ZERO))
                    .filter(marker -> marker.getAttribute(IMarker.SEVERITY, -1) == severity).toList();
        } catch (CoreException e) {
            throw new AssertionError(e);
        }
    }

    private List<IMarker> about(String topic) {
        return Stream.of(IMarker.SEVERITY_WARNING, IMarker.SEVERITY_INFO).flatMap(s -> markers(s).stream())
                .filter(marker -> PairCode.parse(marker.getAttribute(ProblemMarkers.CODE, ""))
                        .filter(code -> code.topic().equals(topic)).isPresent())
                .toList();
    }

    @Test
    void conflictsBetweenAuthoritiesAreWarnings() {
        assertTrue(!about("conflict").isEmpty(), "two sources disagree about the 1.75 mm burr");
    }

    @Test
    void doubleClickShowsTheCell() throws PartInitException {
        IMarker tight = about("tight").get(0);
        fixture.editor().setActivePage(SetUpPage.ID);
        IDE.openEditor(EditorFixture.page(), tight);
        fixture.robot().settle();
        AskedPair shown = fixture.grounds().panel().shown().orElseThrow();
        assertEquals(Verdict.TIGHT, shown.answer().in().verdict());
    }

    @Test
    void unknownDeviceIsAnErrorThatNamesTheNearest() throws CoreException {
        FitChart chart = fixture.editor().answers().chart().orElseThrow();
        fixture.editor().session().set(chart.getInner(), ModelPackage.Literals.AXIS__DEVICES, List.of("dun-sc-100-11"));
        fixture.editor().session().save(new NullProgressMonitor());
        fixture.robot().waitFor("an error", () -> markers(IMarker.SEVERITY_ERROR).stream()
                .anyMatch(marker -> marker.getAttribute(IMarker.MESSAGE, "").contains("dun-sc-100-11")));
    }
}
