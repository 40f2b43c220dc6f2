/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.stream.LongStream;

import org.eclipse.core.resources.IProject;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Listener;
import org.ferrule.io.json.JsonDocuments;
import org.ferrule.model.ModelPackage;
import org.ferrule.quantity.Dimension;
import org.ferrule.samples.GuidesAndBalloons;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.fit.matrix.Side;
import org.ferrule.ui.tests.robot.Projects;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A chart of 200 x 300 devices out of a library of 2,000 stays quick while one dimension is edited. */
class LargeChartTest {

    private static final int ROWS = 200;
    private static final int COLUMNS = 300;
    private static final int EDITS = 12;
    private static final int WARM_AFTER = 5;
    /** Nobody edits faster; checks in the background come to an end. */
    private static final int BETWEEN_EDITS_MS = 800;
    private static final String GUIDE = "devices[g3]/lumens[0]/sections[0]";

    private ChartFixture fixture;
    private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    private final List<Double> cpu = new ArrayList<>();
    private long paintedAt;

    @BeforeEach
    void open() throws CoreException {
        IProject project = Projects.create("Large");
        JsonDocuments documents = new JsonDocuments();
        write(project, "large.devices.json", documents.write(GuidesAndBalloons.library(800, 1200)));
        write(project, "test.rules.json", documents.write(GuidesAndBalloons.rules()));
        write(project, "large.chart.json", documents.write(GuidesAndBalloons.chart(ROWS, COLUMNS)));
        fixture = ChartFixture.of(project, "large.chart.json");
        fixture.robot().waitForJobs();
    }

    private static void write(IProject project, String name, byte[] content) throws CoreException {
        Projects.write(project, name, new String(content, StandardCharsets.UTF_8));
    }

    @AfterEach
    void close() throws CoreException {
        fixture.close();
    }

    @Test
    void answersOnlyOneRowAnewAndQuickly() {
        List<Double> milliseconds = new ArrayList<>();
        fixture.table().control().addListener(SWT.Paint, painted());
        for (int i = 0; i < EDITS; i++) {
            milliseconds.add(edit(i));
            fixture.robot().pause(BETWEEN_EDITS_MS);
        }
        int changed = fixture.editor().answers().shown().orElseThrow().matrix().changes().count();
        assertTrue(changed > 0 && changed <= COLUMNS, changed + " cells were answered anew");
        report(milliseconds);
    }

    private Listener painted() {
        return event -> paintedAt = System.nanoTime();
    }

    /** From the command to the end of the paint event that shows the other answer. */
    private double edit(int i) {
        DocumentSession library = fixture.session("large.devices.json");
        EObject section = fixture.object("large.devices.json", GUIDE);
        var before = fixture.editor().answers().shown().orElseThrow();
        long cpuStart = cpuTime();
        long start = System.nanoTime();
        library.set(section, ModelPackage.Literals.LUMEN_SECTION__ID,
                Dimension.parse(String.format(Locale.ROOT, "0.%03d in min", 40 + i)));
        paintedAt = 0;
        Display display = Display.getCurrent();
        while (fixture.editor().answers().shown().orElseThrow() == before || paintedAt == 0) {
            if (!display.readAndDispatch()) {
                display.sleep();
            }
            if (fixture.editor().answers().shown().orElseThrow() == before) {
                paintedAt = 0;
            }
        }
        cpu.add((cpuTime() - cpuStart) / 1e6);
        return (paintedAt - start) / 1e6;
    }

    /** The time that the display's thread and the solver's have worked, which does not depend on what else runs. */
    private long cpuTime() {
        return LongStream.of(threads.getAllThreadIds()).filter(id -> threads.getThreadInfo(id) != null)
                .filter(id -> id == Thread.currentThread().getId()
                        || threads.getThreadInfo(id).getThreadName().equals("Fit chart solver"))
                .map(threads::getThreadCpuTime).sum();
    }

    private void report(List<Double> milliseconds) {
        List<Double> warm = new ArrayList<>(milliseconds.subList(WARM_AFTER, milliseconds.size()));
        Collections.sort(warm);
        double median = warm.get(warm.size() / 2);
        List<Double> worked = new ArrayList<>(cpu.subList(WARM_AFTER, cpu.size()));
        Collections.sort(worked);
        System.out.printf(Locale.ROOT, "edit to painted, %d x %d of 2000 devices: first %.0f ms, median %.1f ms, "
                + "worst warm %.1f ms; processor time median %.1f ms (machine load %.1f on %d processors)%n", ROWS,
                COLUMNS, milliseconds.get(0), median, warm.get(warm.size() - 1), worked.get(worked.size() / 2),
                ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage(),
                Runtime.getRuntime().availableProcessors());
        assertEquals(ROWS, fixture.table().content().axis(Side.OUTER).size());
    }
}
